package edgewright.desk.jobs;

import edgewright.desk.work.Settings;
import edgewright.texts.Language;
import java.awt.Window;
import java.util.function.Consumer;

/**
 * What all documents on a desk share.
 *
 * @param window in which they lie, before which questions are asked
 * @param settings what is remembered from day to day
 * @param lanes in which work goes on beside the event thread
 * @param questions that are asked, and what is told that did not work
 * @param news is given what has happened, in a sentence
 * @param made the file that was made last for others to read
 * @param printers to which patterns can be sent
 * @param language in which everything is said
 */
public record DeskState(
        Window window,
        Settings settings,
        Lanes lanes,
        Questions questions,
        Consumer<String> news,
        MadeFile made,
        Printers printers,
        Language language) {}
