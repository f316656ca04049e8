package org.loomproof.papers.bay;

import java.util.List;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.Text;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.QrCode;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.words.Messages;

/**
 * QR codes that open a bay sheet's steps on a device. Where a shop's pages are found may be known only when somebody looks at a sheet
 * that was written long before: until then each step carries its name alone.
 */
public final class StepCodes {

    private static final String LINK = "step-link";
    private static final String NAME = "step-id";

    private StepCodes() {}

    /** The place of a step's code, with its name. */
    static Element named(CircuitId circuit) {
        return Element.of("div")
                .styled(LINK)
                .add(Element.of("span", ShopAddress.stepId(circuit)).styled(NAME));
    }

    /**
     * The sheet with a code at each step.
     *
     * @param job the address of the job's pages, without a slash at its end
     */
    public static Page on(Page sheet, String job) {
        Wording words = new Wording(Messages.in(sheet.language()));
        return sheet.changed(
                element -> LINK.equals(element.attributes().get("class")) ? coded(element, job, words) : element);
    }

    private static Element coded(Element element, String job, Wording words) {
        if (!(element.children().getFirst() instanceof Element name)
                || !name.name().equals("span")) {
            return element; // has its code already
        }
        String address = job + "/" + ((Text) name.children().getFirst()).value();
        Element link =
                Element.of("a").with("href", address).add(QrCode.of(address, words.of("bay-sheet.qr", address)), name);
        return new Element(element.name(), element.attributes(), List.of(link));
    }
}
