package steening.well;

import java.util.List;
import java.util.Optional;
import steening.language.Phrase;

/**
 * What drillers call the ground, and the standard terms a word may stand for. A suggestion to be confirmed, never taken
 * as it is: hardpan, gumbo, soapstone and quicksand mean other things in the next county. From memory.
 *
 * @param words in English and Spanish, in lower case
 * @param materials the likeliest first
 * @param note what else to say or to ask; empty where the word is plain
 */
public record GroundWord(List<String> words, List<Material> materials, Optional<Phrase> note) {
  private static final List<GroundWord> ALL = List.of(
      word("clean sand, sand, arena, arena limpia", Material.MEDIUM_SAND, Material.COARSE_SAND, Material.FINE_SAND),
      word("sugar sand, arena azúcar", Material.FINE_SAND),
      noted("quicksand, running sand, heaving sand, arena movediza, arena fluyente",
          "Quicksand is a condition, water flowing upward, and no soil: write down the head as well.",
          "La arena movediza es un estado, agua que sube, y no un suelo: anote también la carga.",
          Material.FINE_SAND, Material.SILTY_SAND),
      word("dirty sand, arena sucia", Material.SILTY_SAND, Material.CLAYEY_SAND),
      word("pea gravel, gravilla, grava fina", Material.GRAVEL),
      noted("bank-run, bank run, cascajo, grava con arena", "Which of the two is there more of?",
          "¿De cuál de las dos hay más?", Material.SAND_AND_GRAVEL, Material.GRAVEL),
      word("dirty gravel, bony clay, grava sucia", Material.CLAYEY_GRAVEL),
      word("cemented gravel, grava cementada", Material.CONGLOMERATE),
      word("rocks, float, cobbles, cantos, boleos, piedra bola", Material.BOULDERS),
      noted("blue clay, gray clay, grey clay, arcilla azul, arcilla gris", "Its colour has a field of its own.",
          "Su color tiene un campo propio.", Material.CLAY),
      noted("gumbo, fat clay, sticky clay, arcilla pegajosa, arcilla grasa, barro", "It balls on the bit.",
          "Se pega a la barrena.", Material.CLAY),
      word("lean clay, brittle clay, arcilla magra", Material.CLAY),
      word("rock flour, polvo de roca", Material.SILT),
      noted("loam, migajón", "A word of farmers: at the top it is topsoil.",
          "Palabra del campo: arriba es suelo vegetal.", Material.TOPSOIL, Material.SILT),
      word("muck, bog, fango, ciénaga", Material.PEAT),
      noted("hardpan, boulder clay, tepetate, duripán",
          "Till, dense clay, and cemented sand are all called so: which is it?",
          "Así se llama al till, a la arcilla densa y a la arena cementada: ¿cuál es?",
          Material.TILL, Material.CLAY, Material.SANDSTONE, Material.CALICHE),
      word("made ground, terraplén", Material.FILL),
      word("shell bed, coquina, concha", Material.SHELLS),
      noted("soapstone, jaboncillo", "In well logs mostly a soft shale.", "En registros de pozos, casi siempre lutita"
          + " blanda.", Material.SHALE, Material.CLAY),
      word("sand rock, roca arenisca", Material.SANDSTONE),
      word("lime rock, roca caliza, cal", Material.LIMESTONE),
      word("flint, sílex", Material.CHERT),
      word("lignite, lignito", Material.COAL, Material.PEAT),
      word("crystalline rock, bedrock, roca, roca cristalina", Material.GRANITE));

  public GroundWord {
    words = List.copyOf(words);
    materials = List.copyOf(materials);
  }

  public static List<GroundWord> all() {
    return ALL;
  }

  /** The word as it was typed, whatever its case. */
  public static Optional<GroundWord> of(String typed) {
    String word = typed.trim();
    return ALL.stream().filter(known -> known.words.stream().anyMatch(word::equalsIgnoreCase)).findFirst();
  }

  private static GroundWord word(String words, Material... materials) {
    return new GroundWord(List.of(words.split(", ")), List.of(materials), Optional.empty());
  }

  private static GroundWord noted(String words, String english, String spanish, Material... materials) {
    Phrase note = Phrase.of(english, spanish);
    return new GroundWord(List.of(words.split(", ")), List.of(materials), Optional.of(note));
  }
}
