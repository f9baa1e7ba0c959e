package edgewright.desk.work;

import edgewright.chart.Counting;
import edgewright.file.SafeFile;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * What the desk remembers from one day to the next: its theme, where its window stands and how it is divided, how charts are looked at, the way of counting, how patterns are published, and the charts worked on last. Kept in one
 * small file; a file that is missing or cannot be read means the defaults, and one that cannot be written is no reason to
 * disturb anybody.
 */
public final class Settings {
    /** The system property that names another file to keep the settings in. */
    static final String FILE_PROPERTY = "edgewright.settings";

    private static final int MOST_RECENT = 8;
    private static final String RECENT = "recent.";
    private static final String CHOICE = "choice.";
    private static final String CONFIG = ".config";

    private final Path file;
    private final Properties values = new Properties();

    public Settings(Path file) {
        this.file = file;
        if (Files.isRegularFile(file)) {
            try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                values.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                values.clear();
            }
        }
    }

    /** The settings of this user, where the machine keeps such things. */
    public static Settings ofUser() {
        String named = System.getProperty(FILE_PROPERTY);
        return new Settings(named != null ? Path.of(named) : fileOfUser(System.getenv()));
    }

    /**
     * The file in the folder that the machine has for settings: where {@code XDG_CONFIG_HOME} says, on Windows where
     * {@code APPDATA} says, else in {@code .config} of the home folder. A variable that names no absolute path is as good as
     * none.
     */
    static Path fileOfUser(Map<String, String> environment) {
        Path folder = folder(environment, "XDG_CONFIG_HOME")
                .or(() -> folder(environment, "APPDATA"))
                .or(() -> folder(environment, "HOME").map(home -> home.resolve(CONFIG)))
                .orElseGet(() -> Path.of(System.getProperty("user.home"), CONFIG));
        return folder.resolve("edgewright").resolve("desk.properties");
    }

    private static Optional<Path> folder(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .flatMap(Settings::pathOf)
                .filter(Path::isAbsolute);
    }

    /** The folder of the settings, in which other things of this user may be kept too. */
    public Path folder() {
        return file.toAbsolutePath().getParent();
    }

    public Theme theme() {
        return ofEnum(Theme.class, "theme").orElse(Theme.LIGHT);
    }

    public void setTheme(Theme theme) {
        put("theme", theme.name());
    }

    /** Its colours and the size of its letters. */
    public Looks looks() {
        return new Looks(theme(), choice(TypeSize.PERCENT_100));
    }

    public Counting counting() {
        return ofEnum(Counting.class, "counting").orElse(Counting.STITCHES);
    }

    public void setCounting(Counting counting) {
        put("counting", counting.name());
    }

    /** What was chosen last among the constants of an enum, else the usual one. */
    public <T extends Enum<T>> T choice(T usual) {
        Class<T> type = usual.getDeclaringClass();
        return ofEnum(type, CHOICE + type.getSimpleName()).orElse(usual);
    }

    /** Remembers what was chosen among the constants of an enum. */
    public void choose(Enum<?> chosen) {
        put(CHOICE + chosen.getDeclaringClass().getSimpleName(), chosen.name());
    }

    /** What was kept under this name; empty if nothing was. */
    public String kept(String name) {
        return values.getProperty(CHOICE + name, "");
    }

    /** Keeps a text in one line under a name. */
    public void keep(String name, String text) {
        put(CHOICE + name, text);
    }

    /** The charts opened or saved last, the latest first; at most eight, whether they still exist or not. */
    public List<Path> recent() {
        List<Path> recent = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            String path = values.getProperty(RECENT + i);
            if (path != null) {
                pathOf(path).ifPresent(recent::add);
            }
        }
        return List.copyOf(recent);
    }

    /** Puts a chart at the head of the recent ones. */
    public void addRecent(Path chart) {
        List<Path> recent = new ArrayList<>(recent());
        recent.remove(kept(chart));
        recent.add(0, kept(chart));
        keepRecent(recent);
    }

    /** Takes a chart out of the recent ones, since it is not there any more. */
    public void removeRecent(Path chart) {
        List<Path> recent = new ArrayList<>(recent());
        recent.remove(kept(chart));
        keepRecent(recent);
    }

    /** A chart as it is remembered, however it was named. */
    private static Path kept(Path chart) {
        return chart.toAbsolutePath().normalize();
    }

    /** What was a path on another system may be none here. */
    private static Optional<Path> pathOf(String text) {
        try {
            return Optional.of(Path.of(text));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private void keepRecent(List<Path> recent) {
        for (int i = 0; i < MOST_RECENT; i++) {
            if (i < recent.size()) {
                values.setProperty(RECENT + i, recent.get(i).toString());
            } else {
                values.remove(RECENT + i);
            }
        }
        write();
    }

    private <T extends Enum<T>> Optional<T> ofEnum(Class<T> type, String key) {
        String name = values.getProperty(key, "").toUpperCase(Locale.ROOT);
        for (T value : type.getEnumConstants()) {
            if (value.name().equals(name)) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    private void put(String key, String value) {
        if (!value.equals(values.setProperty(key, value))) {
            write();
        }
    }

    private void write() {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            // Another desk may read them just now.
            SafeFile.write(file, out -> values.store(new OutputStreamWriter(out, StandardCharsets.UTF_8), null));
        } catch (IOException ignored) {
            // The desk works without a memory, too.
        }
    }
}
