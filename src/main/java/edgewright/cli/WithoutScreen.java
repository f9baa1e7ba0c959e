package edgewright.cli;

import static edgewright.texts.Arg.arg;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What the program does where a window was asked for and there is no screen to open it on. */
public final class WithoutScreen {
    private WithoutScreen() {}

    /**
     * The chart that is shown first where the sources of the program lie: {@code sample-charts/reed-bank.border.json}.
     *
     * @param folder where the program was started
     */
    public static Path sample(Path folder) {
        return folder.resolve("sample-charts").resolve("reed-bank.border.json");
    }

    /**
     * Says that there is no screen. If the sample is at hand and no other chart was named, it is checked and published to
     * {@code target} instead.
     *
     * @param charts what was to be opened: one name or none
     * @param folder where the program was started
     * @return the exit status
     */
    public static int run(List<String> charts, Path folder, Terminal terminal) {
        if (!charts.isEmpty()) {
            terminal.complain(terminal.says().text("screen-chart", arg("chart", ScreenText.oneLine(charts.get(0)))));
            return ExitStatus.BAD_INPUT;
        }
        Path sample = sample(folder);
        if (!Files.exists(sample)) {
            terminal.complain(terminal.says().text("screen-none"));
            return ExitStatus.BAD_INPUT;
        }
        terminal.out().println(terminal.says().text("screen-sample"));
        Path pages = folder.resolve("target").resolve("reed-bank.pdf");
        return Math.max(
                Program.run(List.of("check", sample.toString()), terminal),
                Program.run(List.of("publish", sample.toString(), "--to", pages.toString()), terminal));
    }
}
