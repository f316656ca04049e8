package org.loomproof.pages.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** The templates, as the classes they became when the program was built. What is put into them is escaped for where it stands. */
final class Views {

    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "org.loomproof.pages.views");

    String render(String template, Map<String, Object> parameters) {
        StringOutput out = new StringOutput();
        engine.render(template + ".jte", parameters, out);
        return out.toString();
    }
}
