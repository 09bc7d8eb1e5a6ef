package plycrag.files.html;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Reads a page with the XML parser of the platform, which takes nothing that is not well-formed.
 */
final class PageReader {
  private final Document page;

  PageReader(String text) throws IOException, SAXException, ParserConfigurationException {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    builder.setErrorHandler(null);
    page = builder.parse(new InputSource(new StringReader(text)));
  }

  /** The elements with a name, {@code *} for all, in the order of the page. */
  List<Element> all(String name) {
    NodeList nodes = page.getElementsByTagName(name);
    return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
  }

  /** The texts of the elements with a name. */
  List<String> texts(String name) {
    return all(name).stream().map(Element::getTextContent).toList();
  }

  /** The values that an attribute has on the elements with a name. */
  List<String> values(String name, String attribute) {
    return all(name).stream().map(element -> element.getAttribute(attribute)).toList();
  }

  /** The text of the element with a class. */
  String text(String kind) {
    return all("*").stream()
        .filter(element -> element.getAttribute("class").equals(kind))
        .map(Element::getTextContent)
        .findFirst()
        .orElse("");
  }
}
