package org.loomproof.cli.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.decode.Passage;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What the reports of notes share: a field in one line, and what was not understood. */
final class NotesLines {

    private static final int NAME_WIDTH = 10;
    private static final int VALUE_WIDTH = 30;
    private static final String INDENT = "    ";

    private final Lines lines = new Lines();
    private final Messages messages;

    NotesLines(Messages messages) {
        this.messages = messages;
    }

    Lines lines() {
        return lines;
    }

    /** Name, value, how sure, and the words it was read from; without an answer the name and what there is instead. */
    <T> void field(String key, Optional<Answer<T>> answer, Function<T, String> value, String otherwise) {
        String name = INDENT + Lines.column(messages.text(key), NAME_WIDTH);
        if (answer.isEmpty()) {
            lines.cut(name + otherwise);
            return;
        }
        Answer<T> a = answer.get();
        String sure = messages.text("intake.report.percent", Math.round(a.sure() * 100));
        String by = a.written().isBlank() ? "" : messages.text("intake.report.because", "\"" + a.written() + "\"");
        lines.cut(name + Lines.column(value.apply(a.value()), VALUE_WIDTH) + " " + Lines.column(sure, 6) + by);
    }

    /** A remark below an entry. */
    void remark(String key, Object... holes) {
        lines.wrap(INDENT + messages.text(key, holes), INDENT + "  ");
    }

    void ask(Phrase ask, String key) {
        String text = messages.text(ask);
        if (!text.isEmpty()) {
            remark(key, text);
        }
    }

    /** What the writer added, kept with the entry as it stands. */
    void notes(List<Passage> passages) {
        quoted("intake.report.note", passages);
    }

    void leftOver(List<Passage> passages) {
        quoted("intake.report.left-over", passages);
    }

    private void quoted(String key, List<Passage> passages) {
        passages.forEach(p -> remark(key, p.origin() + " \"" + p.text() + "\""));
    }

    /** Lines without an entry of their own, under their heading. */
    void loose(String headKey, List<Passage> passages) {
        if (!passages.isEmpty()) {
            lines.gap().cut(messages.text(headKey));
            passages.stream()
                    .filter(p -> !p.isBlank())
                    .forEach(p -> lines.wrap(
                            "  "
                                    + messages.text(
                                            "intake.report.loose-line",
                                            p.origin(),
                                            p.text().strip()),
                            INDENT));
        }
    }
}
