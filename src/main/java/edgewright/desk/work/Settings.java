package edgewright.desk.work;

import edgewright.chart.Counting;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
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
 * What the desk remembers from one day to the next: light or dark, the way of counting, how patterns are published, and the charts worked on last. Kept in one
 * small file; a file that is missing or cannot be read means the defaults, and one that cannot be written is no reason to
 * disturb anybody.
 */
public final class Settings {
    /** The system property that names another file to keep the settings in. */
    static final String FILE_PROPERTY = "edgewright.settings";

    private static final int MOST_RECENT = 8;
    private static final String RECENT = "recent.";
    private static final String CHOICE = "choice.";

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
        return new Settings(fileOfUser(System.getenv()));
    }

    private static Path fileOfUser(Map<String, String> environment) {
        String named = System.getProperty(FILE_PROPERTY);
        if (named != null) {
            return Path.of(named);
        }
        for (String variable : List.of("XDG_CONFIG_HOME", "APPDATA")) {
            String folder = environment.get(variable);
            if (folder != null && !folder.isBlank()) {
                return Path.of(folder, "edgewright", "desk.properties");
            }
        }
        return Path.of(System.getProperty("user.home"), ".config", "edgewright", "desk.properties");
    }

    public boolean dark() {
        return Boolean.parseBoolean(values.getProperty("dark"));
    }

    public void setDark(boolean dark) {
        put("dark", Boolean.toString(dark));
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
        Path path = chart.toAbsolutePath().normalize();
        recent.remove(path);
        recent.add(0, path);
        keepRecent(recent);
    }

    /** Takes a chart out of the recent ones, since it is not there any more. */
    public void removeRecent(Path chart) {
        List<Path> recent = new ArrayList<>(recent());
        recent.remove(chart);
        keepRecent(recent);
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
            try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
                values.store(writer, null);
            }
        } catch (IOException ignored) {
            // The desk works without a memory, too.
        }
    }
}
