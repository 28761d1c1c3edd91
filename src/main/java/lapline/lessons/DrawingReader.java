package lapline.lessons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import lapline.content.ContentFiles;
import lapline.content.Problems;
import lapline.content.units.BothUnits;
import lapline.content.units.BothUnitsCheck;
import lapline.trade.measure.UnitSystem;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the drawings of one unit from {@code drawings/} in its folder. */
final class DrawingReader {
  private static final String NAME_FORM = "drawings/[a-z][a-z0-9-]*\\.svg";

  private final ContentFiles files;
  private final String folder;
  private final UnitSystem system;

  /**
   * @param system whose units stand in the drawings
   */
  DrawingReader(ContentFiles files, String folder, UnitSystem system) {
    this.files = files;
    this.folder = folder;
    this.system = system;
  }

  /**
   * @param reference as the lesson writes it, such as {@code drawings/edge.svg}
   * @param line where the lesson writes it
   */
  Optional<Drawing> read(String reference, int line, Problems problems) {
    if (!reference.matches(NAME_FORM)) {
      problems.add(
          line,
          "'" + reference + "' is no drawing of this unit",
          "put the drawing into the unit's folder and write drawings/name.svg");
      return Optional.empty();
    }
    Optional<byte[]> bytes = files.bytes(folder + "/" + reference);
    if (bytes.isEmpty()) {
      problems.add(line, "there is no " + reference, "add the drawing or mend its name");
      return Optional.empty();
    }
    return draw(bytes.get(), reference, line, problems);
  }

  private Optional<Drawing> draw(byte[] bytes, String reference, int line, Problems problems) {
    try {
      Element svg = parser().parse(new ByteArrayInputStream(bytes)).getDocumentElement();
      String name = reference.substring("drawings/".length(), reference.length() - ".svg".length());
      Optional<String> refusal = new DrawingRules(name).apply(svg);
      if (refusal.isPresent()) {
        problems.add(line, reference + " " + refusal.get(), "use shapes and words only");
        return Optional.empty();
      }
      String written = write(svg.getOwnerDocument());
      BothUnitsCheck.pairs(
          written, (what, mend) -> problems.add(line, reference + ": " + what, mend));
      return Optional.of(new Drawing(DrawingRules.titleOf(svg), BothUnits.in(written, system)));
    } catch (SAXParseException e) {
      String where = reference + ", line " + e.getLineNumber();
      problems.add(line, where + ": this is not XML: " + e.getMessage(), "mend the drawing");
    } catch (SAXException | IOException e) {
      problems.add(line, reference + " cannot be read: " + e.getMessage(), "save it again as SVG");
    }
    return Optional.empty();
  }

  private static DocumentBuilder parser() {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setIgnoringComments(true);
      DocumentBuilder parser = factory.newDocumentBuilder();
      parser.setErrorHandler(new DefaultHandler());
      return parser;
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("every Java reads XML", e);
    }
  }

  private static String write(Document document) {
    try {
      Transformer writer = TransformerFactory.newInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      StringWriter out = new StringWriter();
      writer.transform(new DOMSource(document), new StreamResult(out));
      return out.toString();
    } catch (TransformerException e) {
      throw new IllegalStateException("cannot write a drawing that was read", e);
    }
  }
}
