package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.yarn.WhatIsLeft;
import edgewright.yarn.YarnPair;
import edgewright.yarn.YarnSwap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code yarn}: how much yarn the border takes, whether its yarns can be told apart, and whether what is in hand is enough. */
@Command(name = "yarn", mixinStandardHelpOptions = true)
final class YarnCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Mixin
    private ChartArgument argument;

    @Mixin
    private SizeOption size;

    @Option(names = "--json")
    private boolean json;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> judged = argument.judged(size, terminal);
        if (judged.isEmpty()) {
            return ExitStatus.NO;
        }
        Chart chart = judged.get().chart();
        PerSide<Integer> repeats = judged.get()
                .repeats()
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(), terminal.says().text("yarn-size")));
        WhatIsLeft answer = WhatIsLeft.of(chart, repeats);
        List<YarnPair> meetings = YarnPair.of(chart);
        List<YarnSwap> swaps = YarnSwap.of(chart);
        if (json) {
            JsonAnswer.print(YarnAnswer.of(chart, repeats, answer, meetings, swaps), terminal.out());
        } else {
            new YarnText(chart, repeats, terminal.language())
                    .lines(answer, meetings, swaps)
                    .forEach(terminal::say);
        }
        boolean canBeFinished = answer instanceof WhatIsLeft.Enough || answer instanceof WhatIsLeft.Unknown;
        return canBeFinished ? ExitStatus.DONE : ExitStatus.NO;
    }
}
