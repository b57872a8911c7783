package secondbolt.file.svg;

import java.io.StringReader;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Goes through the elements of an XML text, which makes it fetch or unfold nothing. */
final class Xml {
    private Xml() {}

    static XMLStreamReader open(String text) throws XMLStreamException {
        return factory().createXMLStreamReader(new StringReader(text));
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        // A drawing may not make us fetch or unfold anything.
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    /** What the parser itself fails at is the text's fault too. */
    static int next(XMLStreamReader xml) throws XMLStreamException {
        try {
            return xml.next();
        } catch (IllegalStateException | IndexOutOfBoundsException e) {
            throw new XMLStreamException("not parsed", xml.getLocation(), e);
        }
    }

    /** The value of an attribute without a prefix. */
    static Optional<String> attribute(XMLStreamReader xml, String name) {
        return Optional.ofNullable(xml.getAttributeValue(null, name))
                .or(() -> Optional.ofNullable(xml.getAttributeValue("", name)));
    }

    /** Passes over all that is left of an element. */
    static void passOver(XMLStreamReader xml) throws XMLStreamException {
        for (int depth = 1; depth > 0; ) {
            int event = next(xml);
            depth +=
                    event == XMLStreamConstants.START_ELEMENT
                            ? 1
                            : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    /** The title within an element, which is read to its end. */
    static String title(XMLStreamReader xml) throws XMLStreamException {
        String title = "";
        while (next(xml) != XMLStreamConstants.END_ELEMENT) {
            if (!xml.isStartElement()) {
                continue;
            }
            if (xml.getLocalName().equals("title") && title.isEmpty()) {
                title = EdgeName.ofTitle(words(xml));
            } else {
                passOver(xml);
            }
        }
        return title;
    }

    /** The letters directly within an element, which is read to its end. */
    private static String words(XMLStreamReader xml) throws XMLStreamException {
        StringBuilder words = new StringBuilder();
        while (next(xml) != XMLStreamConstants.END_ELEMENT) {
            if (xml.isStartElement()) {
                passOver(xml);
            } else if (xml.isCharacters()) {
                words.append(xml.getText());
            }
        }
        return words.toString();
    }
}
