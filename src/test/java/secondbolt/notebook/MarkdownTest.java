package secondbolt.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A maker's text keeps its form and can do no harm. */
class MarkdownTest {
    /** Source: CommonMark 0.31.2, examples 350 and 378 (their numbers from memory). */
    @Test
    void rendersEmphasisAsTheSpecificationDoes() {
        assertEquals("<p><em>foo bar</em></p>\n", Markdown.html("*foo bar*"));
        assertEquals("<p><strong>foo bar</strong></p>\n", Markdown.html("**foo bar**"));
    }

    @Test
    void showsHtmlAsText() {
        assertEquals(
                "<p>a &lt;img src=x onerror=alert(1)&gt; b</p>\n",
                Markdown.html("a <img src=x onerror=alert(1)> b"));
        assertFalse(Markdown.html("<div>\n<script>x</script>\n</div>").contains("<script"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "javascript:alert(1)",
                "JaVaScRiPt:alert(1)",
                "&#106;avascript:alert(1)",
                "data:text/html,x",
                "file:///etc/hosts",
                "vbscript:x"
            })
    void linksToNothingThatRuns(String link) {
        assertEquals(
                "<p><a rel=\"nofollow\" href=\"\">x</a></p>\n", Markdown.html("[x](" + link + ")"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://example.org/",
                "http://example.org/a?b=c",
                "mailto:a@example.org",
                "photos/fade.jpg"
            })
    void keepsOrdinaryLinks(String link) {
        assertEquals(
                "<p><a rel=\"nofollow\" href=\"" + link + "\">x</a></p>\n",
                Markdown.html("[x](" + link + ")"));
    }

    @Test
    void namesPicturesInsteadOfLoadingThem() {
        assertEquals("<p>my cloth</p>\n", Markdown.html("![my cloth](https://example.org/a.jpg)"));
    }

    @Test
    void putsNoHeadingAboveThoseOfThePage() {
        assertEquals("<p><strong>Loud</strong></p>\n", Markdown.html("# Loud"));
    }
}
