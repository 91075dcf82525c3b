package steening.twin;

import java.math.BigDecimal;
import org.teavm.jso.JSExport;
import steening.journal.Moment;
import steening.number.Decimal;
import steening.number.Elementary;
import steening.number.StudentT;

/**
 * Questions to the packages at the bottom of the core, one a line, and their answers, one a line. Doubles come and go
 * as their bits, so that nothing is rounded on the way.
 */
public final class Probe {
  private Probe() {}

  /** The compiler wants a main class; there is nothing to start. */
  public static void main(String[] arguments) {}

  @JSExport
  public static String answer(String questions) {
    StringBuilder answers = new StringBuilder();
    for (String question : questions.split("\n")) answers.append(one(question)).append('\n');
    return answers.toString();
  }

  private static String one(String question) {
    String[] words = question.split(" ");
    try {
      return switch (words[0]) {
        case "parse" -> Decimal.parse(words[1]).map(Probe::both).orElse("no number");
        case "fixed" -> Decimal.fixed(number(words[1]), Integer.parseInt(words[2]));
        case "upTo" -> Decimal.upTo(number(words[1]), Integer.parseInt(words[2]));
        case "significant" -> Decimal.significant(number(words[1]), Integer.parseInt(words[2]));
        case "ln" -> bits(Elementary.ln(number(words[1])));
        case "log10" -> bits(Elementary.log10(number(words[1])));
        case "exp" -> bits(Elementary.exp(number(words[1])));
        case "sqrt" -> bits(Elementary.sqrt(number(words[1])));
        case "pow" -> bits(Elementary.pow(number(words[1]), number(words[2])));
        case "tail" -> bits(StudentT.tail(number(words[1]), Integer.parseInt(words[2])));
        case "exceeded" -> bits(StudentT.exceeded(number(words[1]), Integer.parseInt(words[2])));
        case "moment" -> clock(Moment.parse(words[1]));
        case "instant" -> clock(new Moment(Long.parseLong(words[1]), Integer.parseInt(words[2])));
        // known to differ: shows that the comparison would see it
        case "platform" -> bits(Math.log10(number(words[1])));
        default -> throw new IllegalStateException("no such question: " + question);
      };
    } catch (IllegalArgumentException refused) {
      return "refused: " + refused.getMessage();
    }
  }

  private static String both(BigDecimal decimal) {
    return decimal.toPlainString() + " " + bits(Decimal.nearest(decimal));
  }

  private static String clock(Moment moment) {
    return moment + " " + moment.epochMillis() + " " + moment.date().getDayOfWeek().ordinal() + " " + moment.clock();
  }

  private static double number(String bits) {
    return Double.longBitsToDouble(Long.parseLong(bits));
  }

  private static String bits(double value) {
    return Long.toString(Double.doubleToLongBits(value));
  }
}
