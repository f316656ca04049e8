package org.loomproof.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.loomproof.shop.job.PapersWanted;
import org.loomproof.shop.job.ShopFiles;
import org.loomproof.workshop.words.Messages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A whole job of our own invention, from its three files to its papers. */
@Command(name = "demo", mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

    private static final String JOB = "bakery-van";

    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "papers-out/" + JOB, descriptionKey = "out")
    private Path out;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    private final Messages messages;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before it calls the command
    DemoCommand(Messages messages) {
        this.messages = messages;
    }

    /** The launcher says where the examples are; a run without it looks beside the working folder. */
    @Override
    public Integer call() {
        Path job = Path.of(System.getProperty("loomproof.home", "."), "examples", JOB);
        return new Desk(spec, messages)
                .judge(
                        run -> run.plan(
                                job.resolve("sheet.yaml"),
                                job.resolve("kit.yaml"),
                                job.resolve("order.yaml"),
                                new PapersWanted(out, ShopFiles.ofPrices(job.resolve("prices.csv")), Optional.empty())),
                        json,
                        "./loomproof prove " + Desk.PLAN);
    }
}
