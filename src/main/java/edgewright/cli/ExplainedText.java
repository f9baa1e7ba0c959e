package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.plain;

import edgewright.proof.TextReading;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.grammar.LineKind;
import edgewright.words.others.Account;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Instructions;
import edgewright.words.write.PatternWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A text line by line, each line with what it was understood as, in the program's own words. */
final class ExplainedText {
    private final Messages says;
    private final String text;
    private final TextReading reading;
    private final Map<Integer, List<String>> own = new HashMap<>();

    ExplainedText(Language language, String text, TextReading reading) {
        this.says = language.messages("cli");
        this.text = text;
        this.reading = reading;
        reading.pattern().ifPresent(pattern -> addOwnWords(pattern, language));
    }

    private void addOwnWords(Instructions pattern, Language language) {
        // A line of others is told what is worked there, not that it is as another line.
        Instructions told = reading.others().isPresent() ? pattern.withEachRoundInFull() : pattern;
        PatternWriter.write(told, language).parts().stream()
                .flatMap(part -> part.blocks().stream())
                .filter(TextBlock.RoundWords.class::isInstance)
                .map(TextBlock.RoundWords.class::cast)
                .forEach(round -> own.putIfAbsent(round.round(), round.lines()));
    }

    /** The lines to be printed. */
    List<String> lines() {
        List<String> printed = new ArrayList<>();
        if (reading.others().isEmpty()) {
            text.lines().forEach(line -> printed.add(line));
            printed.add(says.text("explain-own"));
            own.keySet().stream().sorted().forEach(round -> printed.addAll(ownWords(round)));
            return printed;
        }
        List<Account.Line> lines = reading.others().get().account().lines();
        Set<Integer> told = new HashSet<>();
        for (int i = 0; i < lines.size(); i++) {
            Account.Line line = lines.get(i);
            printed.add(says.text("explain-line", plain("number", line.number()), arg("text", line.text())));
            if (line.kind() != LineKind.BLANK && line.kind() != LineKind.ROUND) {
                printed.add(says.text("explain-understood", arg("what", says.text("explainedAs-" + line.kind()))));
            }
            line.words()
                    .forEach(word -> printed.add(says.text(
                            "explain-word",
                            arg("word", word.word()),
                            arg(
                                    "what",
                                    word.stitch()
                                            .map(stitch -> says.text("explainedStitch-" + stitch))
                                            .orElse(says.text("explain-noStitch"))))));
            line.asides()
                    .forEach(aside -> printed.add(says.text(
                            "explain-aside",
                            plain("column", aside.column()),
                            arg("text", aside.text()),
                            arg("what", says.text("explainedAs-" + aside.kind())))));
            boolean last = i + 1 == lines.size() || !lines.get(i + 1).rounds().equals(line.rounds());
            if (last) {
                line.rounds().stream().filter(told::add).forEach(round -> printed.addAll(ownWords(round)));
            }
        }
        return printed;
    }

    private List<String> ownWords(int round) {
        List<String> words = new ArrayList<>();
        for (String line : own.getOrDefault(round, List.of())) {
            words.add(says.text("explain-understood", arg("what", line)));
        }
        return words;
    }
}
