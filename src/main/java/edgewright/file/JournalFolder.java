package edgewright.file;

import edgewright.file.fault.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * The folder in which unsaved work is kept against a crash, a file for each chart that is worked on, and the one thread that
 * writes there.
 */
public final class JournalFolder {
    /** The system property that names another folder. */
    public static final String FOLDER_PROPERTY = "edgewright.journal";

    /** The ending that a journal is given which cannot be read: it is kept, but reported once only. */
    static final String BROKEN = ".broken";

    private static final String PRESENCE = ".open";

    /** An idle thread ends, so that it never keeps the program from ending. */
    private static final long IDLE_MS = 50;

    private final Path folder;
    private final ScheduledThreadPoolExecutor thread =
            new ScheduledThreadPoolExecutor(1, work -> new Thread(work, "journal"));

    /** What an earlier process did not come to save. */
    public sealed interface Lost {
        /**
         * The work itself.
         *
         * @param journal in which it is kept: clear it, go on with it, or end it to be asked again at the next start
         */
        record Work(JournalEntry entry, Journal journal) implements Lost {}

        /**
         * A journal that is torn, or none. Its file stays where it is.
         *
         * @param file under its name from now on
         */
        record Broken(Path file, Problem problem) implements Lost {}
    }

    /** A folder, which is made when it is needed. */
    public JournalFolder(Path folder) {
        this.folder = folder.toAbsolutePath();
        thread.setKeepAliveTime(IDLE_MS, TimeUnit.MILLISECONDS);
        thread.allowCoreThreadTimeOut(true);
    }

    /** The folder of this user, where the machine keeps such things. */
    public static JournalFolder ofUser() {
        String named = System.getProperty(FOLDER_PROPERTY);
        return new JournalFolder(named != null ? Path.of(named) : folderOfUser(System.getenv()));
    }

    /**
     * The folder within the one that the machine has for the state of programs: where {@code XDG_STATE_HOME} says, on Windows
     * where {@code LOCALAPPDATA} says, else in {@code .local/state} of the home folder
     * (https://specifications.freedesktop.org/basedir-spec/latest). A variable that names no absolute path is as good as none.
     */
    static Path folderOfUser(Map<String, String> environment) {
        return folder(environment, "XDG_STATE_HOME")
                .or(() -> folder(environment, "LOCALAPPDATA"))
                .or(() -> folder(environment, "HOME").map(JournalFolder::stateIn))
                .orElseGet(() -> stateIn(Path.of(System.getProperty("user.home"))))
                .resolve("edgewright")
                .resolve("journal");
    }

    private static Path stateIn(Path home) {
        return home.resolve(".local").resolve("state");
    }

    private static Optional<Path> folder(Map<String, String> environment, String variable) {
        try {
            return Optional.ofNullable(environment.get(variable)).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * A journal for one more chart; nothing is written before there is something to keep.
     *
     * @param trouble told, on the thread of the journals, when one cannot be written; then not again until it could
     */
    public Journal begin(Consumer<Problem> trouble) {
        return new Journal(folder, thread, trouble);
    }

    /**
     * All work that processes left which have ended, the latest first, then the journals that cannot be read. Each is this
     * process's own from now on. Not for the event thread.
     *
     * @param trouble as for a journal that is begun
     */
    public List<Lost> lost(Consumer<Problem> trouble) {
        List<Lost.Work> works = new ArrayList<>();
        List<Lost> broken = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                if (name.endsWith(Journal.ENDING)) {
                    takeOver(file, trouble).ifPresent(lost -> {
                        if (lost instanceof Lost.Work work) {
                            works.add(work);
                        } else {
                            broken.add(lost);
                        }
                    });
                } else if (name.endsWith(PRESENCE) || name.endsWith(Journal.SIGN)) {
                    clearSign(file);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // No folder, nothing lost.
        }
        List<Lost> all = new ArrayList<>(works.stream()
                .sorted((one, other) -> other.entry().at().compareTo(one.entry().at()))
                .toList());
        all.addAll(broken);
        return List.copyOf(all);
    }

    private Optional<Lost> takeOver(Path file, Consumer<Problem> trouble) throws IOException {
        Path sign = Journal.signOf(file);
        ProcessLock.Writer writer = ProcessLock.writerOf(sign);
        if (writer == ProcessLock.Writer.ALIVE) {
            return Optional.empty();
        }
        Optional<HeldFile> held = HeldFile.hold(sign);
        if (held.isEmpty() && writer == ProcessLock.Writer.GONE) {
            // Another process that starts just now was first.
            return Optional.empty();
        }
        try {
            JournalEntry entry = JournalText.entry(TextFile.bytes(file));
            Journal journal = begin(trouble);
            journal.takeOver(entry, file, held);
            return Optional.of(new Lost.Work(entry, journal));
        } catch (FileProblemException e) {
            held.ifPresent(HeldFile::release);
            return Optional.of(new Lost.Broken(SafeFile.setAside(file, BROKEN), e.problem()));
        }
    }

    /** A sign that nobody holds is left from a process that was killed. */
    private static void clearSign(Path sign) throws IOException {
        boolean isNeeded = sign.toString().endsWith(Journal.SIGN) && Files.exists(journalOf(sign));
        if (!isNeeded && ProcessLock.writerOf(sign) == ProcessLock.Writer.GONE) {
            Files.deleteIfExists(sign);
        }
    }

    private static Path journalOf(Path sign) {
        String name = sign.getFileName().toString();
        return sign.resolveSibling(name.substring(0, name.length() - Journal.SIGN.length()) + Journal.ENDING);
    }

    /** Says that this chart is open here from now on, and learns whether it is elsewhere. Not for the event thread. */
    public ChartPresence enter(Path chart) {
        try {
            Files.createDirectories(folder);
            Path real = Files.exists(chart)
                    ? chart.toRealPath()
                    : chart.toAbsolutePath().normalize();
            String name = Fingerprint.of(real.toString().getBytes(StandardCharsets.UTF_8))
                            .sha256()
                    + PRESENCE;
            return ChartPresence.in(folder.resolve(name));
        } catch (IOException e) {
            return ChartPresence.UNKNOWN;
        }
    }

    /** Ends when all that is to be written has been; for the tests, which look at it then. */
    void settle() throws InterruptedException {
        thread.shutdown();
        thread.awaitTermination(1, TimeUnit.MINUTES);
    }
}
