package edgewright.cli;

import static edgewright.texts.Arg.and;
import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.yarn.Amounts;
import edgewright.yarn.WhatIsLeft;
import edgewright.yarn.YarnPair;
import edgewright.yarn.YarnSentences;
import edgewright.yarn.YarnSwap;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the command {@code yarn} says to people. */
final class YarnText {
    private final Language language;
    private final Messages says;
    private final YarnSentences sentences;
    private final Chart chart;
    private final PerSide<Integer> base;

    YarnText(Chart chart, PerSide<Integer> repeats, Language language) {
        this.language = language;
        this.says = language.messages("cli");
        this.sentences = new YarnSentences(language);
        this.chart = chart;
        this.base = chart.border().stitches(0, repeats);
    }

    List<String> lines(WhatIsLeft answer, List<YarnPair> meetings, List<YarnSwap> swaps) {
        List<String> lines = new ArrayList<>();
        lines.add(says.text(
                "yarn-head",
                arg("title", ScreenText.oneLine(chart.title())),
                and("base", base.stream().map(language::count).toList())));
        lines.add("");
        lines.addAll(rounds(answer.amounts()));
        lines.add("");
        lines.addAll(yarns(answer.amounts()));
        lines.add("");
        lines.addAll(sentences.tools(chart.making()));
        lines.addAll(sentences.notes(answer.amounts()));
        for (YarnPair meeting : meetings) {
            lines.add(sentences.contrast(meeting));
            if (meeting.contrast().isLow()) {
                Stream.of(meeting.inner(), meeting.outer())
                        .forEach(yarn -> lines.add(sentences.suggestion(yarn, YarnPair.suggestion(chart, yarn))));
            }
        }
        if (meetings.stream().anyMatch(meeting -> meeting.contrast().isLow())) {
            lines.add(sentences.contrastLimits());
        }
        lines.add("");
        lines.addAll(sentences.left(chart, answer));
        if (!answer.amounts().missing().isEmpty()) {
            swaps.forEach(swap -> lines.add(sentences.swap(swap)));
            lines.add(sentences.swapLaw());
        }
        return lines;
    }

    private List<String> rounds(Amounts amounts) {
        TextTable table = new TextTable(2);
        table.row(
                says.text("yarn-column-round"),
                says.text("yarn-column-yarn"),
                says.text("yarn-column-stitches"),
                says.text("yarn-column-metres"),
                says.text("yarn-column-soFar"));
        for (Amounts.OfRound round : amounts.rounds()) {
            table.row(
                    sentences.round(round.round()),
                    name(chart.yarn(round.round().yarn()).orElseThrow()),
                    language.count(round.round().total()),
                    sentences.worked(round.metres()),
                    sentences.worked(round.metresSoFar()));
        }
        return table.lines();
    }

    private List<String> yarns(Amounts amounts) {
        TextTable table = new TextTable(1);
        table.row(
                says.text("yarn-column-yarn"),
                says.text("yarn-column-needed"),
                says.text("yarn-column-grams"),
                says.text("yarn-column-balls"),
                says.text("yarn-column-inHand"));
        for (Amounts.OfYarn yarn : amounts.yarns()) {
            table.row(
                    name(yarn.yarn()),
                    sentences.toHave(yarn.metres()),
                    sentences.grams(yarn).orElse("-"),
                    sentences.balls(yarn).orElse("-"),
                    yarn.yarn().metresInHand().isPresent()
                            ? sentences.worked(yarn.yarn().metresInHand().getAsDouble())
                            : "-");
        }
        return table.lines();
    }

    private static String name(Yarn yarn) {
        return ScreenText.oneLine(yarn.id() + " " + yarn.name());
    }
}
