package steening.drawing;

/** The outline of a shape, point by point, as the {@code d} of an SVG path. */
final class Path {
  private final StringBuilder out = new StringBuilder();

  private Path() {}

  static Path at(double x, double y) {
    return new Path().move(x, y);
  }

  Path move(double x, double y) {
    return add('M', x, y);
  }

  Path to(double x, double y) {
    return add('L', x, y);
  }

  /** Level to another x. */
  Path across(double x) {
    out.append('H').append(Svg.number(x));
    return this;
  }

  /** Plumb to another y. */
  Path down(double y) {
    out.append('V').append(Svg.number(y));
    return this;
  }

  /** A curve that bends towards a point on its way. */
  Path bend(double towardsX, double towardsY, double x, double y) {
    add('Q', towardsX, towardsY);
    out.append(' ').append(Svg.number(x)).append(' ').append(Svg.number(y));
    return this;
  }

  Path shut() {
    out.append('Z');
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }

  private Path add(char command, double x, double y) {
    out.append(command).append(Svg.number(x)).append(' ').append(Svg.number(y));
    return this;
  }
}
