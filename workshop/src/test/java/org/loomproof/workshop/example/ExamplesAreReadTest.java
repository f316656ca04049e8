package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.template.TradeDefaults;

class ExamplesAreReadTest {
    @Test
    void noneOfTheExamplesHasGoneMissing() {
        assertThat(ExampleFiles.list()).hasSize(ExampleFiles.NUMBER);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsReadWithoutAProblem(Path folder) {
        Checked<ReadBrief> read = read(folder);
        assertThat(read).as("%s", read).isInstanceOf(Checked.Good.class);
    }

    static Checked<ReadBrief> read(Path folder) {
        TradeDefaults usual = TradeDefaults.read();
        return new BriefReader(usual, new SheetCompletion(usual))
                .read(folder.resolve("sheet.yaml"), folder.resolve("kit.yaml"), folder.resolve("order.yaml"));
    }

    static Brief brief(Path folder) {
        return ((Checked.Good<ReadBrief>) read(folder)).value().brief();
    }

    static List<Path> examples() {
        return ExampleFiles.list();
    }
}
