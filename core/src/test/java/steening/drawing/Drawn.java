package steening.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;

/** A drawing read back by the platform's XML parser, which refuses what is not well formed. */
final class Drawn {
  private final Document document;

  Drawn(String svg) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(new DefaultHandler());
      document = builder.parse(new InputSource(new StringReader(svg)));
    } catch (Exception e) {
      throw new AssertionError("not well formed: " + e.getMessage() + "\n" + svg, e);
    }
  }

  /** The space a text takes; the letters of a line of 11 reach about 9 above and 2.5 below where they stand. */
  record Box(String text, double left, double top, double right, double bottom) {
    boolean overlaps(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  Element root() {
    return document.getDocumentElement();
  }

  double width() {
    return number(root(), "width");
  }

  double height() {
    return number(root(), "height");
  }

  List<Element> all(String name) {
    return elements(document.getElementsByTagName(name));
  }

  boolean has(String id) {
    return all("*").stream().anyMatch(e -> e.getAttribute("id").equals(id));
  }

  Element byId(String id) {
    return all("*").stream().filter(e -> e.getAttribute("id").equals(id)).findFirst()
        .orElseThrow(() -> new AssertionError("no part with the id " + id));
  }

  /** The first rectangle in a part. */
  Element rect(String id) {
    Element part = byId(id);
    return part.getTagName().equals("rect") ? part : (Element) part.getElementsByTagName("rect").item(0);
  }

  List<String> words(String id) {
    return elements(byId(id).getElementsByTagName("text")).stream().map(Element::getTextContent).toList();
  }

  List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    for (Element text : all("text")) {
      double width = Lettering.width(text.getTextContent());
      for (Element bold : elements(text.getElementsByTagName("tspan"))) {
        width += Lettering.boldWidth(bold.getTextContent()) - Lettering.width(bold.getTextContent());
      }
      double x = number(text, "x");
      double y = number(text, "y");
      String anchor = text.getAttribute("text-anchor");
      double left = anchor.equals("end") ? x - width : anchor.equals("middle") ? x - width / 2 : x;
      boxes.add(new Box(text.getTextContent(), left, y - 9, left + width, y + 2.5));
    }
    return boxes;
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private static List<Element> elements(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) elements.add((Element) nodes.item(i));
    return elements;
  }
}
