package steening.stage.sample;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import steening.field.Field;
import steening.field.QuantityField;
import steening.language.Phrase;
import steening.quantity.Quantity;
import steening.quantity.Scale;

/** What a laboratory looks for in water beside bacteria and nitrate, with the limits that public systems keep to. */
enum Constituent {
  NITRITE(trace("nitrite", Phrase.of("nitrite as nitrogen", "nitrito como nitrógeno"), "0.02 mg/L", "5 mg/L"),
      Phrase.of(
          "Sewage, manure or fertilizer close by. Not for infants; boiling makes it stronger.",
          "Drenaje, estiércol o fertilizante cercano. No es para bebés; hervir lo concentra."),
      Limit.primary(1)),
  ARSENIC(trace("arsenic", Phrase.of("arsenic", "arsénico"), "0.004 mg/L", "0.2 mg/L"),
      Phrase.of("Mostly from the rock itself. Boiling makes it stronger.",
          "Casi siempre de la roca misma. Hervir lo concentra."),
      Limit.primary(0.010)),
  LEAD(trace("lead", Phrase.of("lead", "plomo"), "0.002 mg/L", "0.2 mg/L"),
      Phrase.of("Mostly from pipe, solder, brass and old packers. No amount is held to be good for children.",
          "Casi siempre de tubos, soldadura, latón y obturadores viejos. Ninguna cantidad es buena para los niños."),
      Limit.lead()),
  COPPER(trace("copper", Phrase.of("copper", "cobre"), "0.1 mg/L", "5 mg/L"),
      Phrase.of("Mostly from pipe, where the water is sour.", "Casi siempre de la tubería, si el agua es ácida."),
      Limit.copper(), Limit.secondary(1.0)),
  FLUORIDE(trace("fluoride", Phrase.of("fluoride", "fluoruro"), "0.6 mg/L", "8 mg/L"),
      Phrase.of("From the rock. Above the secondary limit it stains children's teeth, far more harms bones.",
          "De la roca. Sobre el límite secundario mancha los dientes de los niños; mucho más daña los huesos."),
      Limit.primary(4.0), Limit.secondary(2.0)),
  URANIUM(trace("uranium", Phrase.of("uranium", "uranio"), "0.005 mg/L", "0.3 mg/L"),
      Phrase.of("From granite and some sandstones.", "De granitos y algunas areniscas."),
      Limit.uranium()),
  IRON(trace("iron", Phrase.of("iron", "hierro"), "0.12 mg/L", "20 mg/L"),
      Phrase.of("From the ground, or a well not yet developed clear: taste and rust stains.",
          "Del terreno, o de un pozo aún sin limpiar: sabor y manchas de óxido."),
      Limit.secondary(0.3)),
  MANGANESE(trace("manganese", Phrase.of("manganese", "manganeso"), "0.02 mg/L", "5 mg/L"),
      Phrase.of("From the ground: taste and black stains. Much of it is bad for infants; ask the health authority.",
          "Del terreno: sabor y manchas negras. Mucho es malo para bebés; pregunte a la autoridad de salud."),
      Limit.secondary(0.05)),
  CHLORIDE(trace("chloride", Phrase.of("chloride", "cloruro"), "25 mg/L", "3000 mg/L"),
      Phrase.of("Road salt, a softener, sewage, brine or the sea: salty taste, and metal corrodes.",
          "Sal de caminos, suavizador, drenaje, salmuera o mar: sabor salado y metal corroído."),
      Limit.secondary(250)),
  SULFATE(trace("sulfate", Phrase.of("sulfate", "sulfato"), "30 mg/L", "3000 mg/L"),
      Phrase.of("From gypsum or pyrite: bitter taste; loosens the bowels of those not used to it.",
          "De yeso o pirita: sabor amargo; laxante para quien no está habituado."),
      Limit.secondary(250)),
  SOLIDS(LangelierIndex.SOLIDS.optional(),
      Phrase.of("All that is dissolved: taste and scale.", "Todo lo disuelto: sabor y sarro."),
      Limit.secondary(500)),
  PH(LangelierIndex.PH.optional(),
      Phrase.of("Sour water takes up metal from pipes; the other end leaves scale.",
          "El agua ácida disuelve metal de la tubería; la alcalina deja sarro."),
      Limit.range(6.5, 8.5).toArray(Limit[]::new));

  final QuantityField field;

  /** Where it comes from and what it does: common knowledge of the trade, no source. */
  final Phrase cause;

  /** The gravest first. */
  final List<Limit> limits;

  Constituent(QuantityField field, Phrase cause, Limit... limits) {
    this.field = field;
    this.cause = cause;
    this.limits = List.of(limits);
  }

  /** The gravest limit that this amount breaks. */
  Optional<Limit> broken(Quantity found) {
    return limits.stream().filter(l -> l.isBrokenBy(found)).findFirst();
  }

  /** Where it is read to figures, so that traces are not rounded away. */
  Scale scale() {
    return field.scale() == Scale.NUMBER ? Scale.NUMBER : Scale.TRACE;
  }

  static Field[] fields() {
    return Stream.of(values()).map(c -> c.field).toArray(Field[]::new);
  }

  private static QuantityField trace(String name, Phrase label, String example, String most) {
    return QuantityField.of(name, Scale.TRACE, label, example, example)
        .between("0 mg/L", "100000 mg/L").usually("0 mg/L", most).optional();
  }
}
