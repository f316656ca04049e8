package org.loomproof.workshop.brief.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.FormatLine;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.trade.template.PartDefaults;

/** Reads the three files of a job. Problems come file by file (sheet, kit, order), in each in the order of its text. */
public final class BriefReader {

    private final PartDefaults usual;
    private final UnaryOperator<Sheet> completion;

    /**
     * @param usual what stands in for figures that are left out
     * @param completion gives each circuit without a path the one that is usual for its role
     */
    public BriefReader(PartDefaults usual, UnaryOperator<Sheet> completion) {
        this.usual = usual;
        this.completion = completion;
    }

    /** The brief in three files, or every problem in them. */
    public Checked<ReadBrief> read(Path sheet, Path kit, Path order) {
        List<Problem> problems = new ArrayList<>();
        Optional<SourceText> sheetText = TextFile.read(sheet).orTell(problems);
        Optional<SourceText> kitText = TextFile.read(kit).orTell(problems);
        Optional<SourceText> orderText = TextFile.read(order).orTell(problems);
        return read(sheetText, kitText, orderText, problems);
    }

    /** The brief in three texts, or every problem in them. */
    public Checked<ReadBrief> read(SourceText sheet, SourceText kit, SourceText order) {
        return read(Optional.of(sheet), Optional.of(kit), Optional.of(order), List.of());
    }

    private Checked<ReadBrief> read(
            Optional<SourceText> sheetText,
            Optional<SourceText> kitText,
            Optional<SourceText> orderText,
            List<Problem> ofFiles) {
        List<Problem> problems = new ArrayList<>(ofFiles);
        Optional<Sheet> sheet = sheetText.flatMap(text -> readSheet(text).orTell(problems));
        Optional<Kit> kit = kitText.flatMap(text -> readKit(text).orTell(problems));
        Optional<Order> order = orderText.flatMap(text -> readOrder(text, sheet).orTell(problems));
        if (sheet.isEmpty() || kit.isEmpty() || order.isEmpty()) {
            return new Checked.Bad<>(problems);
        }
        Brief brief = new Brief(completion.apply(sheet.get()), kit.get(), order.get());
        return new Checked.Good<>(
                new ReadBrief(brief, sheetText.orElseThrow(), kitText.orElseThrow(), orderText.orElseThrow()));
    }

    /** The sheet in the text, as written: not completed. */
    public Checked<Sheet> readSheet(SourceText text) {
        return one(text, SheetReader.FORMAT, in -> SheetReader.read(in, figures()));
    }

    /** The kit in the text. */
    public Checked<Kit> readKit(SourceText text) {
        return one(text, KitReader.FORMAT, in -> KitReader.read(in, figures()));
    }

    /** The order in the text; names of the sheet are checked where there is a sheet. */
    public Checked<Order> readOrder(SourceText text, Optional<Sheet> sheet) {
        return one(text, OrderReader.FORMAT, in -> OrderReader.read(in, figures(), sheet.map(completion)));
    }

    private FigureReader figures() {
        return FigureReader.of(usual, Certainty.STATED);
    }

    private static <T> Checked<T> one(
            SourceText text, String format, java.util.function.Function<MappingCursor, T> reader) {
        Problems problems = new Problems(text.name());
        Optional<T> value = FormatLine.open(text, format, problems).map(reader);
        return value.isPresent() ? problems.orElse(value.get()) : new Checked.Bad<>(problems.inOrder());
    }
}
