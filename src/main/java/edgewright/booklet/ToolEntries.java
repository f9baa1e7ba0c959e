package edgewright.booklet;

import edgewright.chart.Chart;
import edgewright.chart.Swatch;
import edgewright.chart.Terms;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The hook and the tension, where the designer names them. */
final class ToolEntries {
    private final TextSetter setter;
    private final Chart chart;
    private final Terms terms;

    ToolEntries(TextSetter setter, Chart chart, Terms terms) {
        this.setter = setter;
        this.chart = chart;
        this.terms = terms;
    }

    List<Strip> set(Tag parent) {
        List<Strip> strips = new ArrayList<>();
        Tag list = parent.child(StandardStructureTypes.L);
        chart.making()
                .hook()
                .ifPresent(hook -> strips.addAll(
                        entry(list, Texts.of("needs.hook"), Texts.of("needs.millimetres", number(hook.mm())))));
        chart.making().swatch().ifPresent(swatch -> strips.addAll(tension(list, swatch)));
        return strips;
    }

    private List<Strip> tension(Tag list, Swatch swatch) {
        return entry(
                list,
                Texts.of("needs.tension." + terms),
                Texts.of("needs.swatch", number(swatch.stitchesIn10Cm()), number(swatch.roundsIn10Cm())));
    }

    private List<Strip> entry(Tag list, String label, String text) {
        Tag item = list.child(StandardStructureTypes.LI);
        List<Strip> entry = new ArrayList<>(new Entries(setter)
                .entry(
                        item.child(StandardStructureTypes.LBL),
                        label,
                        setter.styles().strong(),
                        List.of(),
                        0,
                        List.of(new Entries.Line(
                                item.child(StandardStructureTypes.L_BODY),
                                text,
                                setter.styles().text(),
                                false))));
        entry.set(0, entry.get(0).spaced(setter.betweenPt()));
        return entry;
    }

    /** Without noughts after the point. */
    private static String number(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
