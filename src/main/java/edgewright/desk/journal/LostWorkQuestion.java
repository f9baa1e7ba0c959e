package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.desk.parts.ShortText;
import edgewright.file.JournalEntry;
import edgewright.file.ReadResult;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Dialog.ModalityType;
import java.awt.Window;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Optional;

/** Shows lost work beside what is saved, and asks what is to become of it. */
final class LostWorkQuestion {
    private static final int MOST_OF_NAME = 60;

    private final JournalEntry lost;
    private final Optional<Saved> saved;
    private final Messages says;
    private final Language language;

    /**
     * What lies in the file of the chart now.
     *
     * @param at when it was written
     */
    record Saved(ReadResult.Read read, Instant at) {
        Chart chart() {
            return read.chart();
        }
    }

    /** What can be done about it. */
    interface Answers {
        /** The lost work is laid on the desk, unsaved. */
        void takeUp();

        /** The lost work goes into a file of its own beside the saved chart. */
        void keepBoth();

        /** The lost work is deleted. */
        void delete();

        /** Nothing is done; it is asked again at the next start. */
        void later();
    }

    /** @param saved empty where there is no file any more, it cannot be read, or there never was one */
    LostWorkQuestion(JournalEntry lost, Optional<Saved> saved, Language language) {
        this.lost = lost;
        this.saved = saved;
        this.language = language;
        says = language.messages("desk/journal");
    }

    /** Asks, and goes on with the answer. */
    void ask(Window owner, Answers answers) {
        ComparedCharts charts =
                new ComparedCharts(saved.map(known -> says.text("lost-saved")), says.text("lost-lost"), language);
        charts.about(
                saved.map(known -> says.text("lost-savedAt", arg("time", time(known.at()))))
                        .orElse(" "),
                says.text("lost-edits", count("edits", lost.edits()), arg("time", time(lost.at()))));
        charts.show(saved.map(Saved::chart), lost.chart());
        ChoiceDialog dialog = new ChoiceDialog(owner, ModalityType.APPLICATION_MODAL, "lostWork", sentence(), charts);
        dialog.setTitle(says.text("lost-title"));
        dialog.choice("takeUp", says.text("lost-takeUp"), answers::takeUp);
        if (saved.isPresent()) {
            dialog.choice("keepBoth", says.text("lost-keepBoth"), answers::keepBoth);
            dialog.choice("keepSaved", says.text("lost-keepSaved"), answers::delete);
        } else {
            dialog.choice("delete", says.text("lost-delete"), answers::delete);
        }
        dialog.choice("later", says.text("lost-later"), answers::later);
        dialog.unchosen(answers::later);
        dialog.open();
    }

    private String sentence() {
        String title = ShortText.of(lost.chart().title(), MOST_OF_NAME);
        Optional<String> file = lost.file().map(LostWorkQuestion::name);
        if (file.isEmpty()) {
            return says.text("lost-ofNew", arg("title", title));
        }
        if (saved.isEmpty()) {
            return says.text("lost-ofGone", arg("title", title), arg("file", file.get()));
        }
        boolean isAsItWas =
                lost.saved().filter(saved.get().read().fingerprint()::equals).isPresent();
        return isAsItWas
                ? says.text("lost-ofFile", arg("title", title), arg("file", file.get()))
                : says.text("lost-ofChanged", arg("title", title), arg("file", file.get()));
    }

    private static String name(Path file) {
        return ShortText.of(String.valueOf(file.getFileName()), MOST_OF_NAME);
    }

    private String time(Instant at) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(Locale.forLanguageTag(language.tag()))
                .withZone(ZoneId.systemDefault())
                .format(at);
    }
}
