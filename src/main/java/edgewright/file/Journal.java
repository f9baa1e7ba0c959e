package edgewright.file;

import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * The unsaved work on one chart, kept on the disk against a crash: within a second of each edit its file holds the chart as it
 * is then, whole, and as long as nothing is unsaved there is no file. It belongs to this process for as long as that lives.
 *
 * <p>Any thread may call; each call comes back at once, since the file is written on the thread of the {@link JournalFolder}.
 */
public final class Journal {
    static final String ENDING = ".journal";
    static final String SIGN = ".lock";

    /** What is edited within this time is written once. */
    private static final long GATHERED_MS = 250;

    private final Path folder;
    private final ScheduledExecutorService thread;
    private final Consumer<Problem> trouble;
    private final Object state = new Object();
    /** What is to be on the disk next; empty for nothing. */
    private Optional<JournalEntry> wanted = Optional.empty();

    private boolean isDue;
    private boolean isEnded;

    // The rest belongs to the thread.
    private Optional<Path> file = Optional.empty();
    private Optional<HeldFile> sign = Optional.empty();
    private Optional<JournalEntry> onDisk = Optional.empty();
    private boolean isTroubled;

    /** A journal that has nothing to keep yet. */
    Journal(Path folder, ScheduledExecutorService thread, Consumer<Problem> trouble) {
        this.folder = folder;
        this.thread = thread;
        this.trouble = trouble;
    }

    /** Goes on with what another process kept and lost; to be called before anything else. */
    void takeOver(JournalEntry entry, Path keptIn, Optional<HeldFile> held) {
        synchronized (state) {
            wanted = Optional.of(entry);
        }
        file = Optional.of(keptIn);
        sign = held;
        onDisk = wanted;
    }

    /** Keeps this work, in the place of what was kept before. */
    public void keep(JournalEntry entry) {
        want(Optional.of(entry));
    }

    /** Nothing is unsaved any more, or what is unsaved may be thrown away. */
    public void clear() {
        want(Optional.empty());
    }

    /** The chart is not worked on here any more. What is kept and was not cleared is offered at the next start. */
    public void end() {
        synchronized (state) {
            isEnded = true;
        }
        due();
    }

    private void want(Optional<JournalEntry> entry) {
        synchronized (state) {
            wanted = entry;
        }
        due();
    }

    private void due() {
        synchronized (state) {
            if (!isDue) {
                isDue = true;
                // Nothing is asked of it: what goes wrong is told by the work itself.
                Future<?> unused = thread.schedule(this::work, GATHERED_MS, TimeUnit.MILLISECONDS);
            }
        }
    }

    private void work() {
        Optional<JournalEntry> entry;
        boolean ending;
        synchronized (state) {
            isDue = false;
            entry = wanted;
            ending = isEnded;
        }
        try {
            if (entry.isEmpty()) {
                takeAway();
            } else if (!entry.equals(onDisk)) {
                write(entry.get());
            }
            onDisk = entry;
            isTroubled = false;
        } catch (FileProblemException e) {
            tell(e.problem());
        } catch (IOException e) {
            tell(SystemProblems.ofWriting(folder, e));
        } catch (RuntimeException e) {
            // A mistake of the program: whoever works on must know that nothing is kept.
            tell(Problem.ofFile(new FileFault.OfTheSystem(e.toString())));
        }
        if (ending) {
            letGo();
        }
    }

    private void write(JournalEntry entry) throws IOException {
        if (file.isEmpty()) {
            Files.createDirectories(folder);
            Path mine = folder.resolve(UUID.randomUUID() + ENDING);
            sign = HeldFile.hold(signOf(mine));
            file = Optional.of(mine);
        }
        byte[] bytes = JournalText.bytes(entry);
        if (bytes.length > TextFile.MOST_BYTES) {
            // It could not be read again.
            throw new FileProblemException(Problem.ofFile(new FileFault.TooLarge(TextFile.MOST_BYTES)), null);
        }
        SafeFile.write(file.get(), out -> out.write(bytes));
    }

    private void takeAway() throws IOException {
        if (file.isPresent()) {
            Files.deleteIfExists(file.get());
        }
        letGo();
    }

    private void letGo() {
        sign.ifPresent(HeldFile::release);
        sign = Optional.empty();
        file = Optional.empty();
    }

    /** Once, until it goes well again. */
    private void tell(Problem problem) {
        if (!isTroubled) {
            isTroubled = true;
            trouble.accept(problem);
        }
    }

    /** The file that a process holds while the journal is its own. */
    static Path signOf(Path journal) {
        String name = journal.getFileName().toString();
        return journal.resolveSibling(name.substring(0, name.length() - ENDING.length()) + SIGN);
    }
}
