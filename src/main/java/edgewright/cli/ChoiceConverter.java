package edgewright.cli;

import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import edgewright.draw.paint.ColourMode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** One of a few words, in small or capital letters, with hyphens where the constant has underscores. */
abstract class ChoiceConverter<E extends Enum<E>> implements ITypeConverter<E> {
    private final E[] choices;

    ChoiceConverter(E[] choices) {
        this.choices = choices;
    }

    @Override
    public E convert(String word) {
        return Arrays.stream(choices)
                .filter(choice -> word(choice).equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(
                        () -> new TypeConversionException(CommandTexts.of("choice", word, String.join(", ", words()))));
    }

    private List<String> words() {
        return Arrays.stream(choices).map(this::word).toList();
    }

    /** How a choice is written on the command line. */
    String word(E choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code UK} or {@code US}. */
    static final class OfTerms extends ChoiceConverter<Terms> {
        OfTerms() {
            super(Terms.values());
        }

        @Override
        String word(Terms choice) {
            return choice.name();
        }
    }

    /** {@code UK}, {@code US} or {@code both}. */
    static final class OfPrintedTerms extends ChoiceConverter<PrintedTerms> {
        OfPrintedTerms() {
            super(PrintedTerms.values());
        }

        @Override
        String word(PrintedTerms choice) {
            return choice == PrintedTerms.BOTH ? super.word(choice) : choice.name();
        }
    }

    /** {@code stitches} or {@code with-chains}. */
    static final class OfCounting extends ChoiceConverter<Counting> {
        OfCounting() {
            super(Counting.values());
        }
    }

    /** {@code front} or {@code back}. */
    static final class OfLayerCounted extends ChoiceConverter<FitCommand.LayerCounted> {
        OfLayerCounted() {
            super(FitCommand.LayerCounted.values());
        }
    }

    /** {@code top-bottom}, {@code left-right} or {@code both}. */
    static final class OfUntied extends ChoiceConverter<PieceOption.Untied> {
        OfUntied() {
            super(PieceOption.Untied.values());
        }
    }

    /** {@code fabric}, {@code marks} or {@code both}. */
    static final class OfLayer extends ChoiceConverter<DrawCommand.LayerChoice> {
        OfLayer() {
            super(DrawCommand.LayerChoice.values());
        }
    }

    /** {@code corner} or {@code border}. */
    static final class OfView extends ChoiceConverter<DrawCommand.View> {
        OfView() {
            super(DrawCommand.View.values());
        }
    }

    /** {@code colour} or {@code black}. */
    static final class OfInking extends ChoiceConverter<ColourMode> {
        OfInking() {
            super(ColourMode.values());
        }
    }

    /** {@code right} or {@code left}. */
    static final class OfHand extends ChoiceConverter<HookHand> {
        OfHand() {
            super(HookHand.values());
        }
    }

    /** {@code standard}, {@code large-print} or {@code black-and-white}. */
    static final class OfEdition extends ChoiceConverter<Edition> {
        OfEdition() {
            super(Edition.values());
        }
    }

    /** {@code same}, {@code a3} or {@code poster}. */
    static final class OfChartPaper extends ChoiceConverter<ChartPaper> {
        OfChartPaper() {
            super(ChartPaper.values());
        }
    }

    /** {@code a4} or {@code letter}. */
    static final class OfPaper extends ChoiceConverter<Paper> {
        OfPaper() {
            super(Paper.values());
        }
    }

    /** {@code text}, {@code markdown} or {@code html}. */
    static final class OfWordsFormat extends ChoiceConverter<WordsFormat> {
        OfWordsFormat() {
            super(WordsFormat.values());
        }
    }

    /** {@code guide}, {@code worksheet} or {@code yarn}. */
    static final class OfSupplement extends ChoiceConverter<SupplementsOption.Supplement> {
        OfSupplement() {
            super(SupplementsOption.Supplement.values());
        }
    }
}
