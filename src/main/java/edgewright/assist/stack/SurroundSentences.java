package edgewright.assist.stack;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;
import static edgewright.texts.Arg.count;

import edgewright.assist.stack.SurroundAnswer.Change;
import edgewright.assist.stack.SurroundAnswer.Closes;
import edgewright.assist.stack.SurroundAnswer.NeverCloses;
import edgewright.assist.stack.SurroundAnswer.TooLarge;
import edgewright.chart.Chart;
import edgewright.chart.Heading;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Says what comes of working one border round another. */
public final class SurroundSentences {
    private final Language language;
    private final Messages says;

    private enum Whose {
        INNER,
        OUTER
    }

    private enum Parity {
        EVEN,
        ODD
    }

    public SurroundSentences(Language language) {
        this.language = language;
        this.says = language.messages("assist");
    }

    /** What stands over both as one: the title names both, whoever designed one of them designed it, the notes follow each other. */
    public Heading heading(Chart inner, Chart outer) {
        List<String> designers = Stream.of(inner.designer(), outer.designer())
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
        List<String> notes = Stream.of(inner.notes(), outer.notes())
                .filter(text -> !text.isEmpty())
                .toList();
        return new Heading(
                says.text("stack-title", arg("inner", inner.title()), arg("outer", outer.title())),
                language.and(designers),
                String.join("\n\n", notes),
                inner.terms());
    }

    /** How many plain rounds there are, and which yarns have new ids. */
    public List<String> of(Closes answer) {
        List<String> lines = new ArrayList<>();
        lines.add(says.text(
                "stack-closes",
                count("between", answer.between()),
                arg("yarn", answer.plainYarn().name())));
        new TreeMap<>(answer.renamed())
                .forEach((old, now) -> lines.add(says.text("stack-renamed", arg("old", old), arg("new", now))));
        return lines;
    }

    /** Why it does not work. */
    public String of(NeverCloses answer) {
        return says.text(
                "stack-never",
                choice("even", answer.innerEven() ? Parity.EVEN : Parity.ODD),
                count("divisor", answer.divisor()));
    }

    /** What would make it work. */
    public String of(Change change) {
        return says.text(
                "stack-change",
                choice("whose", change.ofInner() ? Whose.INNER : Whose.OUTER),
                count("then", change.then()),
                count("now", change.now()),
                choice("where", change.section()),
                count("between", change.between()));
    }

    /** What is too large about both. */
    public String of(TooLarge answer) {
        return says.text(
                "stack-tooLarge-" + answer.what(), count("found", answer.found()), count("most", answer.most()));
    }
}
