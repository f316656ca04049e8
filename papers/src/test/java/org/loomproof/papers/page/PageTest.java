package org.loomproof.papers.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Text;

/** A page that was written is read back as it was. */
class PageTest {

    @Test
    void aPageIsReadBackAsItWas() {
        Page page = new Page(
                Locale.of("es"),
                "Hoja & \"más\" <de> taller",
                "bay-sheet",
                List.of(
                        Element.of("h1", "Ash & \u00d8ster's <van>"),
                        new Text("\nbegins with a line's end, after an element that has one of its own"),
                        Element.of("p")
                                .add(Element.of("strong", "a"))
                                .add(" b ")
                                .add(Element.of("em", "c")),
                        Element.of("input").with("value", "two\nlines\tand \"more\""),
                        Element.of("p", "]]> &amp; <!-- no comment -->"),
                        Element.of("svg")
                                .with("xmlns", "http://www.w3.org/2000/svg")
                                .with("viewBox", "0 0 1 1")
                                .add(Element.of("path").with("d", "M0 0h1"))));

        Page read = Page.read(page.html());

        assertThat(read).isEqualTo(page);
        assertThat(read.html()).isEqualTo(page.html());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "no page", "<html><head><title>x</title></head></html>", "<html><head/><body></body></html>"
            })
    void whatIsNoPageOfOursIsNotRead(String text) {
        assertThatThrownBy(() -> Page.read(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nothingIsFetchedWhileAPageIsRead() {
        String asks =
                "<!DOCTYPE html [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><html lang=\"en\"><head><title>&x;</title>"
                        + "</head><body><main>&x;</main></body></html>";
        Page read = Page.read(asks);
        assertThat(read.title()).isEmpty();
        assertThat(read.content()).isEmpty();
    }
}
