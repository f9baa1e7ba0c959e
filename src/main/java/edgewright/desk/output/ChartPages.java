package edgewright.desk.output;

import edgewright.booklet.Preview;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import java.io.IOException;
import java.util.Optional;

/** The pages of the pattern of a chart. */
record ChartPages(Chart chart) implements PagePreview.Pages {
    @Override
    public Optional<Preview> make(BookletOptions options, Progress progress) throws IOException {
        return Preview.of(chart, options, progress);
    }

    @Override
    public Optional<Preview> first(BookletOptions options, Progress progress) throws IOException {
        return Preview.firstOf(chart, options, progress);
    }
}
