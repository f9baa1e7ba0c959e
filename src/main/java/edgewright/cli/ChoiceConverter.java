package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;

import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.shop.ShopSize;
import edgewright.texts.Messages;
import edgewright.words.write.RoundsLayout;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Options that take one of a few words, in small or capital letters, with hyphens where the constant has underscores. */
final class ChoiceConverter {
    private static final List<Class<? extends Enum<?>>> CHOICES = List.of(
            Terms.class,
            PrintedTerms.class,
            Counting.class,
            HookHand.class,
            RoundsLayout.class,
            ColourMode.class,
            MarkStyle.class,
            ChartKind.class,
            Edition.class,
            Paper.class,
            ChartPaper.class,
            WordsFormat.class,
            FitCommand.LayerCounted.class,
            FromPictureCommand.FirstStitch.class,
            PieceOption.Untied.class,
            DrawCommand.LayerChoice.class,
            DrawCommand.View.class,
            ShopSize.class,
            BookletPart.class);

    private ChoiceConverter() {}

    /** Options of the commands know all these choices from then on. */
    static void register(CommandLine commands, Messages says) {
        CHOICES.forEach(type -> register(commands, type, says));
    }

    /** The constants are asked for when a word is there, so that a command does not set up the choices of all others. */
    private static <T extends Enum<?>> void register(CommandLine commands, Class<T> type, Messages says) {
        commands.registerConverter(type, word -> choice(List.of(type.getEnumConstants()), word, says));
    }

    private static <T extends Enum<?>> T choice(List<T> choices, String word, Messages says) {
        return choices.stream()
                .filter(choice -> word(choice).equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException(says.text(
                        "choice",
                        arg("found", word),
                        commas(
                                "choices",
                                choices.stream().map(ChoiceConverter::word).toList()))));
    }

    /** How a choice is written on the command line; terms are written as they are everywhere. */
    private static String word(Enum<?> choice) {
        boolean isTerms = Arrays.stream(Terms.values()).map(Terms::name).anyMatch(choice.name()::equals);
        return isTerms ? choice.name() : choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
