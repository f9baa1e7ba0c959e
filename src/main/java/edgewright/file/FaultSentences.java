package edgewright.file;

import edgewright.file.Problem.Shape;
import edgewright.file.Problem.Token;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** What a sentence says of each fault, from the texts in {@code edgewright/file/problems.properties}. */
final class FaultSentences implements Fault.Cases<String> {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("edgewright.file.problems", Locale.ROOT);

    /** The longest piece of a file that is quoted in a sentence, in characters. */
    static final int LONGEST_QUOTE = 40;

    /** The most that are named where there are many to choose from. */
    private static final int MOST_CHOICES = 8;

    /** The text with this key, with its gaps filled. */
    static String filled(String key, Object... values) {
        return new MessageFormat(TEXTS.getString(key), Locale.UK).format(values);
    }

    private static String name(Shape shape) {
        return TEXTS.getString("shape." + shape.name());
    }

    private static String name(Token token) {
        return TEXTS.getString("token." + token.name());
    }

    /** {@code A, B or C}; of many only the first. */
    private static String choice(List<String> choices) {
        boolean many = choices.size() > MOST_CHOICES;
        List<String> told = choices.subList(0, many ? MOST_CHOICES : choices.size()).stream()
                .map(FaultSentences::quote)
                .toList();
        String text = told.get(0);
        for (int i = 1; i < told.size(); i++) {
            text = filled(i == told.size() - 1 ? "choice.last" : "choice.next", text, told.get(i));
        }
        return many ? text + " …" : text;
    }

    /** A piece of the file, which may be of any length. */
    private static String quote(String found) {
        return PrintableText.shortened(found, LONGEST_QUOTE);
    }

    @Override
    public String of(FileFault.Simple fault) {
        return filled(fault.name());
    }

    @Override
    public String of(FileFault.NoFolder fault) {
        return filled("NO_FOLDER", PrintableText.of(fault.folder()));
    }

    @Override
    public String of(FileFault.OfTheSystem fault) {
        return filled("SYSTEM", PrintableText.of(fault.words()));
    }

    @Override
    public String of(FileFault.TooLarge fault) {
        return filled("TOO_LARGE", fault.most());
    }

    @Override
    public String of(JsonFault.NoObject fault) {
        return filled("NO_OBJECT", quote(fault.found()));
    }

    @Override
    public String of(JsonFault.EndsEarly fault) {
        return filled("ENDS_EARLY", name(fault.expected()));
    }

    @Override
    public String of(JsonFault.NotJson fault) {
        return filled("NOT_JSON", fault.column(), quote(fault.found()), name(fault.expected()));
    }

    @Override
    public String of(JsonFault.MoreAfterEnd fault) {
        return filled("MORE_AFTER_END", fault.column(), quote(fault.found()));
    }

    @Override
    public String of(JsonFault.Twice fault) {
        return filled("TWICE", fault.firstLine());
    }

    @Override
    public String of(JsonFault.TooDeep fault) {
        return filled("TOO_DEEP", fault.most());
    }

    @Override
    public String of(JsonFault.LongNumber fault) {
        return filled("LONG_NUMBER", fault.most());
    }

    @Override
    public String of(ChartFault.NotAChart fault) {
        return filled("NOT_A_CHART", quote(fault.format()));
    }

    @Override
    public String of(ChartFault.NewerVersion fault) {
        return filled("NEWER_VERSION", quote(fault.found()), fault.newest());
    }

    @Override
    public String of(ChartFault.NoSuchVersion fault) {
        return filled("NO_SUCH_VERSION", quote(fault.found()), fault.expected());
    }

    @Override
    public String of(ChartFault.Missing fault) {
        return filled("MISSING", name(fault.expected()));
    }

    @Override
    public String of(ChartFault.WrongShape fault) {
        return filled("WRONG_SHAPE", name(fault.found()), name(fault.expected()));
    }

    @Override
    public String of(ChartFault.NotInRange fault) {
        return filled("NOT_IN_RANGE", quote(fault.found()), fault.least(), fault.most());
    }

    @Override
    public String of(ChartFault.NotAMeasure fault) {
        return filled("NOT_A_MEASURE", quote(fault.found()), quote(fault.least()), fault.most());
    }

    @Override
    public String of(ChartFault.NoSuchChoice fault) {
        return filled("NO_SUCH_CHOICE", quote(fault.found()), choice(fault.choices()));
    }

    @Override
    public String of(ChartFault.NotAColour fault) {
        return filled("NOT_A_COLOUR", quote(fault.found()));
    }

    @Override
    public String of(ChartFault.NotAnId fault) {
        return filled("NOT_AN_ID", quote(fault.found()), fault.longest());
    }

    @Override
    public String of(ChartFault.SameId fault) {
        return filled("SAME_ID", quote(fault.id()));
    }

    @Override
    public String of(ChartFault.NoSuchYarn fault) {
        return filled("NO_SUCH_YARN", quote(fault.id()), choice(fault.ids()));
    }

    @Override
    public String of(ChartFault.NoSuchStitch fault) {
        return filled("NO_SUCH_STITCH", quote(fault.letter()), fault.place(), choice(fault.letters()));
    }

    @Override
    public String of(ChartFault.NoSuchColumn fault) {
        return filled("NO_SUCH_COLUMN", fault.found(), fault.last());
    }

    @Override
    public String of(ChartFault.WrongNumber fault) {
        return filled("WRONG_NUMBER", fault.found(), fault.least(), fault.most());
    }
}
