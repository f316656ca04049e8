package org.loomproof.papers.markup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class MarkupWriterTest {

    @Test
    void textAndValuesAreEscaped() {
        Element element = Element.of("b", "1 < 2 & \"so\" > 0").with("title", "a \"b\"\n<c>");
        assertThat(MarkupWriter.fragment(element))
                .isEqualTo("<b title=\"a &quot;b&quot;&#10;&lt;c&gt;\">1 &lt; 2 &amp; \"so\" &gt; 0</b>");
    }

    @Test
    void whatXmlCannotHoldAndWhatTurnsTextRoundIsReplaced() {
        assertThat(MarkupWriter.fragment(Element.of("b", "a\u0000b\u202Ec\uD800d\uFFFFe")))
                .isEqualTo("<b>a\uFFFDb\uFFFDc\uFFFDd\uFFFDe</b>");
    }

    @Test
    void picturesAndOtherScriptsArePassedOn() {
        String text = "\uD83D\uDE9A Ω \u05E2\u05D1";
        assertThat(MarkupWriter.fragment(Element.of("b", text))).isEqualTo("<b>" + text + "</b>");
    }

    @Test
    void anEmptyElementIsClosedTheWayHtmlWantsIt() {
        assertThat(MarkupWriter.fragment(Element.of("span"))).isEqualTo("<span></span>");
        assertThat(MarkupWriter.fragment(Element.of("br"))).isEqualTo("<br/>");
    }

    @Test
    void namesThatAreNotNamesAreOurOwnFault() {
        assertThatThrownBy(() -> Element.of("b onclick=x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Element.of("b").with("a b", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MarkupWriter.fragment(Element.of("style", "a > b {}")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
