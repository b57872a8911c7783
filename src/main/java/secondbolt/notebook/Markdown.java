package secondbolt.notebook;

import java.util.List;
import java.util.Set;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.DefaultUrlSanitizer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Turns a maker's free text into HTML that can do no harm: HTML in it is shown as text, links lead
 * to web pages, mail and neighbouring files only, and nothing is loaded from elsewhere.
 */
final class Markdown {
    private static final List<String> LINKS = List.of("http", "https", "mailto");
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder()
                    .escapeHtml(true)
                    .sanitizeUrls(true)
                    .urlSanitizer(new DefaultUrlSanitizer(LINKS))
                    .nodeRendererFactory(Tamed::new)
                    .build();

    private Markdown() {}

    /** HTML for a place in a page that holds blocks. */
    static String html(String text) {
        return RENDERER.render(PARSER.parse(text));
    }

    /**
     * What must look another way inside a page: a picture is named, not loaded, and a heading is a
     * paragraph, so that it does not stand above those of the page.
     */
    private record Tamed(HtmlNodeRendererContext context) implements NodeRenderer {
        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Image.class, Heading.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof Heading) {
                context.getWriter().tag("p");
                context.getWriter().tag("strong");
                children(node);
                context.getWriter().tag("/strong");
                context.getWriter().tag("/p");
                context.getWriter().line();
            } else {
                children(node);
            }
        }

        private void children(Node parent) {
            for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
                context.render(node);
            }
        }
    }
}
