package edgewright.desk.start;

import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.texts.Language;
import java.nio.file.Files;
import java.nio.file.Path;

/** The chart that a card stands for. */
sealed interface CardChart {
    /** Looks at it; takes a while, and is done beside the event thread. */
    CardContent look(double scale, Language language);

    /** The name of its file, without what all chart files end in. */
    String name();

    /** A sample, by its name among {@link Samples#NAMES}. */
    record Sample(String name) implements CardChart {
        @Override
        public CardContent look(double scale, Language language) {
            return drawn(Samples.chart(name), scale, language);
        }
    }

    /** A chart worked on lately, in its file. */
    record Recent(Path file) implements CardChart {
        @Override
        public String name() {
            String name = String.valueOf(file.getFileName());
            return name.endsWith(ChartFiles.ENDING)
                    ? name.substring(0, name.length() - ChartFiles.ENDING.length())
                    : name;
        }

        @Override
        public CardContent look(double scale, Language language) {
            if (Files.notExists(file)) {
                return new CardContent.Gone();
            }
            return ChartFiles.read(file) instanceof ReadResult.Read read
                    ? drawn(read.chart(), scale, language)
                    : new CardContent.Unreadable();
        }
    }

    private static CardContent drawn(Chart chart, double scale, Language language) {
        return new CardContent.Drawn(chart, CardPicture.of(chart, scale, language));
    }
}
