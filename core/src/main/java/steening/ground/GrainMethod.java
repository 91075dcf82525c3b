package steening.ground;

import java.util.Optional;
import steening.language.Phrase;
import steening.number.Elementary;
import steening.quantity.Scale;
import steening.reckoning.Coefficient;
import steening.reckoning.Term;

/**
 * One formula from grain size to hydraulic conductivity, with the sizes it was fitted to.
 *
 * <p>K = (g / ν) C f(n) d², after Vukovic and Soro 1992 as Odong 2007 gives them (memory; that the limits must be kept:
 * seen). Between formulas a factor of five is normal.
 */
enum GrainMethod {
  HAZEN("hazen", "Hazen", "Kh", "D10 0.1 to 3 mm, Cu under 5", "D10 0.1 a 3 mm, Cu menor que 5") {
    @Override
    boolean holds(Grains g) {
      return g.d10() > 0.1 && g.d10() < 3 && g.cu() < 5;
    }

    @Override
    Term conductivity(Grains g) {
      return g.byViscosity(6e-4, Term.number(1).plus(Term.number(10).times(g.n().minus(Term.number(0.26)))));
    }
  },
  KOZENY_CARMAN(
      "kozeny-carman", "Kozeny-Carman, 1/120", "Kk", "no clay, D10 up to 3 mm", "sin arcilla, D10 hasta 3 mm") {
    @Override
    boolean holds(Grains g) {
      return g.d10() > CLAY_MM && g.d10() <= 3;
    }

    @Override
    Term conductivity(Grains g) {
      return g.byViscosity(8.3e-3, cubed(g));
    }
  },
  KOZENY_CARMAN_180(
      "kozeny-carman-180", "Kozeny-Carman, 1/180", "Kc", "no clay, D10 up to 3 mm", "sin arcilla, D10 hasta 3 mm") {
    @Override
    boolean holds(Grains g) {
      return KOZENY_CARMAN.holds(g);
    }

    @Override
    Term conductivity(Grains g) {
      return g.byViscosity(1.0 / 180, cubed(g));
    }
  },
  BEYER("beyer", "Beyer", "Kb", "D10 0.06 to 0.6 mm, Cu 1 to 20", "D10 0.06 a 0.6 mm, Cu 1 a 20") {
    @Override
    boolean holds(Grains g) {
      return g.d10() > 0.06 && g.d10() < 0.6 && g.cu() > 1 && g.cu() < 20;
    }

    @Override
    Term conductivity(Grains g) {
      return g.byViscosity(6e-4, Term.number(500).over(g.uniformity()).log10());
    }
  },
  SLICHTER("slichter", "Slichter", "Ks", "D10 0.01 to 5 mm", "D10 0.01 a 5 mm") {
    @Override
    boolean holds(Grains g) {
      return g.d10() > 0.01 && g.d10() < 5;
    }

    @Override
    Term conductivity(Grains g) {
      return g.byViscosity(1e-2, g.n().power(3.287));
    }
  },
  TERZAGHI(
      "terzaghi", "Terzaghi", "Kt", "large-grained sand, no sizes given; factor between sharp and smooth grains",
      "arena de grano grande, sin tamaños; factor entre granos angulosos y lisos") {
    @Override
    boolean holds(Grains g) {
      return true;
    }

    @Override
    Term conductivity(Grains g) {
      Term pores = g.n().minus(Term.number(0.13)).over(Term.number(1).minus(g.n()).power(Term.number(1).over(3)));
      return g.byViscosity((6.1e-3 + 10.7e-3) / 2, pores.squared());
    }
  },
  RECLAMATION(
      "reclamation", "US Bureau of Reclamation", "Kr", "medium sand (read here as D60 0.25 to 2 mm), Cu under 5",
      "arena media (leída aquí como D60 0.25 a 2 mm), Cu menor que 5") {
    @Override
    boolean holds(Grains g) {
      return g.d20().isPresent() && g.d60() >= 0.25 && g.d60() <= 2 && g.cu() < 5;
    }

    /** K = 0.36 d^2.3 in cm/s and mm. */
    @Override
    Term conductivity(Grains g) {
      double coherent = 0.36e-2 * Elementary.pow(1000, 2.3);
      return Coefficient.giving(Scale.CONDUCTIVITY, coherent).of(Scale.GRAIN, 2.3).term()
          .times(g.d20().orElseThrow().power(2.3));
    }
  };

  /** Where clay begins (Wentworth 1922). */
  private static final double CLAY_MM = 0.004;

  final String answer;
  final String symbol;
  final Phrase title;
  final Phrase domain;

  GrainMethod(String answer, String title, String symbol, String english, String spanish) {
    this.answer = answer;
    this.title = Phrase.of("K by " + title, "K según " + title);
    this.symbol = symbol;
    this.domain = Phrase.of(english, spanish);
  }

  abstract boolean holds(Grains grains);

  abstract Term conductivity(Grains grains);

  Optional<Term> of(Grains grains) {
    if (!holds(grains)) return Optional.empty();
    return Optional.of(conductivity(grains).named(symbol, title, Scale.CONDUCTIVITY));
  }

  private static Term cubed(Grains g) {
    return g.n().power(3).over(Term.number(1).minus(g.n()).squared());
  }
}
