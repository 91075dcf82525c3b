package steening.stage.pump.line;

import java.util.List;
import steening.quantity.Figure;
import steening.quantity.FlowRate;
import steening.quantity.Length;
import steening.quantity.Quantity;
import steening.quantity.Scale;
import steening.reckoning.NotReckonable;

/** A maker's curve of head against flow, read at points and taken as straight between them. */
record PumpCurve(List<Quantity> flows, List<Quantity> heads) {
  /**
   * A curve that falls.
   *
   * @throws NotReckonable where it has one point only, its points do not pair, or it does not fall as the flow grows
   */
  static PumpCurve of(List<Quantity> flows, List<Quantity> heads) {
    if (flows.size() != heads.size()) {
      throw new NotReckonable(
          "{0} flows and {1} heads do not pair.", "{0} gastos y {1} cargas no forman pares.",
          Integer.toString(flows.size()), Integer.toString(heads.size()));
    }
    if (flows.size() < 2) {
      throw new NotReckonable(
          "One point, {0} at {1}, is no curve; read at least two points from the maker's sheet.",
          "Un punto, {0} a {1}, no es una curva; lea al menos dos puntos de la hoja del fabricante.",
          flow(flows.get(0)), head(heads.get(0)));
    }
    for (int i = 1; i < flows.size(); i++) {
      boolean falls = flows.get(i).coherent() > flows.get(i - 1).coherent()
          && heads.get(i).coherent() < heads.get(i - 1).coherent();
      if (falls) continue;
      throw new NotReckonable(
          "From {0} at {1} to {2} at {3} the curve does not fall with growing flow. Read the points again.",
          "De {0} a {1} a {2} a {3} la curva no baja al crecer el gasto. Lea otra vez los puntos.",
          flow(flows.get(i - 1)), head(heads.get(i - 1)), flow(flows.get(i)), head(heads.get(i)));
    }
    return new PumpCurve(flows, heads);
  }

  private int stretch(double flow) {
    int i = 0;
    while (i < flows.size() - 2 && flow > flows.get(i + 1).coherent()) i++;
    return i;
  }

  double head(double flow) {
    int i = stretch(flow);
    double q = flows.get(i).coherent();
    double h = heads.get(i).coherent();
    return h + (heads.get(i + 1).coherent() - h) * (flow - q) / (flows.get(i + 1).coherent() - q);
  }

  double least() {
    return flows.get(0).coherent();
  }

  double most() {
    return flows.get(flows.size() - 1).coherent();
  }

  static Figure flow(Quantity quantity) {
    return new Figure(new FlowRate(quantity.coherent()), Scale.FLOW);
  }

  static Figure head(Quantity quantity) {
    return new Figure(Length.ofMetres(quantity.coherent()), Scale.DEPTH);
  }
}
