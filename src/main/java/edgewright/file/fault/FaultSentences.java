package edgewright.file.fault;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.file.fault.Problem.Shape;
import edgewright.file.fault.Problem.Token;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;

/** What a sentence says of each fault. */
final class FaultSentences implements Fault.Cases<String> {
    /** The longest piece of a file that is quoted in a sentence, in characters. */
    static final int LONGEST_QUOTE = 40;

    /** The most that are named where there are many to choose from. */
    private static final int MOST_CHOICES = 8;

    private final Language language;
    private final Messages says;

    FaultSentences(Language language) {
        this.language = language;
        this.says = language.messages("file");
    }

    private String name(Shape shape) {
        return says.text("shape-" + shape.name());
    }

    private String name(Token token) {
        return says.text("token-" + token.name());
    }

    /** {@code A, B or C}; of many only the first. */
    private String choice(List<String> choices) {
        boolean many = choices.size() > MOST_CHOICES;
        String told = language.or(choices.subList(0, many ? MOST_CHOICES : choices.size()).stream()
                .map(FaultSentences::quote)
                .toList());
        return many ? says.text("choice-many", arg("choices", told)) : told;
    }

    /** A piece of the file, which may be of any length. */
    private static String quote(String found) {
        return PrintableText.shortened(found, LONGEST_QUOTE);
    }

    @Override
    public String of(FileFault.Simple fault) {
        return says.text("file-" + fault);
    }

    @Override
    public String of(FileFault.NoFolder fault) {
        return says.text("noFolder", arg("folder", PrintableText.of(fault.folder())));
    }

    @Override
    public String of(FileFault.OfTheSystem fault) {
        return says.text("system", arg("words", PrintableText.of(fault.words())));
    }

    @Override
    public String of(FileFault.TooLarge fault) {
        return says.text("tooLarge", count("bytes", fault.most()));
    }

    @Override
    public String of(JsonFault.NoObject fault) {
        return says.text("noObject", arg("found", quote(fault.found())));
    }

    @Override
    public String of(JsonFault.EndsEarly fault) {
        return says.text("endsEarly", arg("expected", name(fault.expected())));
    }

    @Override
    public String of(JsonFault.NotJson fault) {
        return says.text(
                "notJson",
                number("column", fault.column()),
                arg("found", quote(fault.found())),
                arg("expected", name(fault.expected())));
    }

    @Override
    public String of(JsonFault.MoreAfterEnd fault) {
        return says.text("moreAfterEnd", number("column", fault.column()), arg("found", quote(fault.found())));
    }

    @Override
    public String of(JsonFault.Twice fault) {
        return says.text("twice", number("line", fault.firstLine()));
    }

    @Override
    public String of(JsonFault.TooDeep fault) {
        return says.text("tooDeep", count("levels", fault.most()));
    }

    @Override
    public String of(JsonFault.LongNumber fault) {
        return says.text("longNumber", count("characters", fault.most()));
    }

    @Override
    public String of(ChartFault.NotAChart fault) {
        return says.text("notAChart", arg("format", quote(fault.format())));
    }

    @Override
    public String of(ChartFault.NewerVersion fault) {
        return says.text("newerVersion", arg("version", quote(fault.found())), number("newest", fault.newest()));
    }

    @Override
    public String of(ChartFault.NoSuchVersion fault) {
        return says.text("noSuchVersion", arg("version", quote(fault.found())), number("newest", fault.expected()));
    }

    @Override
    public String of(ChartFault.Missing fault) {
        return says.text("missing", arg("expected", name(fault.expected())));
    }

    @Override
    public String of(ChartFault.WrongShape fault) {
        return says.text("wrongShape", arg("found", name(fault.found())), arg("expected", name(fault.expected())));
    }

    @Override
    public String of(ChartFault.NotInRange fault) {
        return says.text(
                "notInRange",
                arg("found", quote(fault.found())),
                count("least", fault.least()),
                count("most", fault.most()));
    }

    @Override
    public String of(ChartFault.NotAMeasure fault) {
        return says.text(
                "notAMeasure",
                arg("found", quote(fault.found())),
                arg("least", quote(fault.least())),
                number("largest", fault.most()));
    }

    @Override
    public String of(ChartFault.NoSuchChoice fault) {
        return says.text("noSuchChoice", arg("found", quote(fault.found())), arg("choices", choice(fault.choices())));
    }

    @Override
    public String of(ChartFault.NotAColour fault) {
        return says.text("notAColour", arg("found", quote(fault.found())));
    }

    @Override
    public String of(ChartFault.NotAnId fault) {
        return says.text("notAnId", arg("found", quote(fault.found())), count("longest", fault.longest()));
    }

    @Override
    public String of(ChartFault.SameId fault) {
        return says.text("sameId", arg("id", quote(fault.id())));
    }

    @Override
    public String of(ChartFault.NoSuchYarn fault) {
        return says.text("noSuchYarn", arg("id", quote(fault.id())), arg("ids", choice(fault.ids())));
    }

    @Override
    public String of(ChartFault.NoSuchStitch fault) {
        return says.text(
                "noSuchStitch",
                arg("letter", quote(fault.letter())),
                number("place", fault.place()),
                arg("letters", choice(fault.letters())));
    }

    @Override
    public String of(ChartFault.NoSuchColumn fault) {
        return says.text("noSuchColumn", number("column", fault.found()), number("last", fault.last()));
    }

    @Override
    public String of(ChartFault.NoName fault) {
        return says.text("noName");
    }

    @Override
    public String of(ChartFault.SameName fault) {
        return says.text("sameName", arg("name", quote(fault.name())));
    }

    @Override
    public String of(ChartFault.SameRound fault) {
        return says.text("sameRound", number("round", fault.round()));
    }

    @Override
    public String of(ChartFault.NotClosing fault) {
        return says.text(
                "notClosing",
                count("found", fault.found()),
                arg(
                        "nearest",
                        choice(fault.nearest().stream().map(String::valueOf).toList())));
    }

    @Override
    public String of(ChartFault.NotOneOf fault) {
        return says.text(fault.both() ? "bothOf" : "noneOf", arg("members", choice(fault.members())));
    }

    @Override
    public String of(ChartFault.WrongNumber fault) {
        if (fault.least() == fault.most()) {
            return says.text("wrongNumberOfAll", count("found", fault.found()), count("most", fault.most()));
        }
        return says.text(
                "wrongNumber",
                count("found", fault.found()),
                count("least", fault.least()),
                count("most", fault.most()));
    }

    @Override
    public String of(ChartFault.NotAnImprint fault) {
        return says.text("notAnImprint", arg("format", quote(fault.format())));
    }

    @Override
    public String of(ChartFault.NotAMotif fault) {
        return says.text("notAMotif", arg("format", quote(fault.format())));
    }

    @Override
    public String of(ChartFault.NotLikeFirst fault) {
        return says.text("notLikeFirst", number("round", fault.round()));
    }

    @Override
    public String of(ChartFault.NoWords fault) {
        return says.text("noWords", count("longest", fault.longest()));
    }

    @Override
    public String of(ChartFault.NotAWebAddress fault) {
        return says.text("notAWebAddress", arg("found", quote(fault.found())));
    }
}
