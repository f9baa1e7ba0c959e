package edgewright.words.write;

import edgewright.chart.Chart;
import edgewright.chart.Swatch;
import edgewright.chart.Terms;
import edgewright.fit.Inches;
import edgewright.texts.Bundle;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.Phrasebook;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** The hook, the tension and how wide the border comes out, where the designer has said what they follow from. */
final class ToolsWording {
    private static final int MM_IN_CM = 10;
    private static final int QUARTERS = 4;
    private static final String[] FRACTIONS = {"", "\u00bc", "\u00bd", "\u00be"};

    private final Phrasebook texts = Phrasebook.ofPattern();
    private final Phrasebook terms;

    ToolsWording(Terms terms) {
        this.terms = Phrasebook.of(terms);
    }

    List<TextBlock> entries(Chart chart) {
        List<TextBlock> entries = new ArrayList<>();
        chart.making().hook().ifPresent(hook -> entries.add(entry("needs.hook", texts.text("needs.mm", hook))));
        chart.making().swatch().ifPresent(swatch -> {
            entries.add(new TextBlock.Entry(
                    Bundle.capital(terms.text("tension")),
                    texts.text("needs.swatch", number(swatch.stitchesIn10Cm()), number(swatch.roundsIn10Cm()))));
            entries.add(entry("needs.width", width(chart.rounds().size(), swatch)));
        });
        return entries;
    }

    private TextBlock entry(String key, String text) {
        return new TextBlock.Entry(texts.text(key), text);
    }

    private String width(int rounds, Swatch swatch) {
        double mm = rounds * swatch.roundMm();
        BigDecimal cm = BigDecimal.valueOf(mm / MM_IN_CM).setScale(1, RoundingMode.HALF_UP);
        return texts.text("needs.cmAndInches", number(cm.doubleValue()), inches(mm));
    }

    /** As {@link Inches} writes them, until the words have a language too. */
    private static String inches(double mm) {
        long quarters = Inches.quarters(mm);
        String fraction = FRACTIONS[(int) (quarters % QUARTERS)];
        long whole = quarters / QUARTERS;
        return whole == 0 && !fraction.isEmpty() ? fraction : whole + fraction;
    }

    /** Without noughts after the point. */
    private static String number(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
