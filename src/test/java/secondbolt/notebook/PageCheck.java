package secondbolt.notebook;

import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import secondbolt.notebook.site.SiteFile;

/** Finds the broken links and doubled anchors of a site; its pages are well-formed XML as well. */
final class PageCheck {
    private final Map<String, SiteFile> files = new TreeMap<>();
    private final Map<String, Document> pages = new TreeMap<>();

    PageCheck(List<SiteFile> site) {
        for (SiteFile file : site) {
            files.put(file.path(), file);
            if (file.path().endsWith(".html")) {
                pages.put(file.path(), parsed(file));
            }
        }
    }

    Document page(String path) {
        return pages.get(path);
    }

    private static Document parsed(SiteFile file) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            return factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(file.text().strip())));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError(file.path() + " is not well-formed: " + e.getMessage(), e);
        }
    }

    /** What is wrong, as {@code page: what}. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        pages.forEach(
                (path, page) -> {
                    List<String> ids = values(page, "id");
                    ids.stream()
                            .filter(id -> ids.indexOf(id) != ids.lastIndexOf(id))
                            .forEach(id -> faults.add(path + ": twice #" + id));
                    values(page, "href").forEach(href -> checkLink(path, href, faults));
                    values(page, "src").forEach(src -> checkLink(path, src, faults));
                });
        return faults;
    }

    private void checkLink(String from, String href, List<String> faults) {
        URI link = URI.create("site:///" + from.replace(" ", "%20")).resolve(href);
        if (!"site".equals(link.getScheme())) {
            return;
        }
        String to = link.getPath().substring(1);
        if (!files.containsKey(to)) {
            faults.add(from + ": no file " + href);
        } else if (link.getFragment() != null
                && !values(pages.get(to), "id").contains(link.getFragment())) {
            faults.add(from + ": no anchor " + href);
        }
    }

    static List<String> values(Document page, String attribute) {
        List<String> values = new ArrayList<>();
        NodeList elements = page.getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            Element element = (Element) elements.item(i);
            if (element.hasAttribute(attribute)) {
                values.add(element.getAttribute(attribute));
            }
        }
        return values;
    }
}
