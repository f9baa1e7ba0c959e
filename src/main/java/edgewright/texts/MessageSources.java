package edgewright.texts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A file of messages cut into its messages, none of them parsed yet.
 *
 * @param plain by its key the text of each message in one line without anything to fill in
 * @param others by its key the source of each other message, and of each term, whose key begins with a hyphen
 */
record MessageSources(Map<String, String> plain, Map<String, String> others) {
    static MessageSources read(String file, Respelling respelling) {
        try (InputStream in = MessageSources.class.getClassLoader().getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("no such messages: " + file);
            }
            return cut(
                    file,
                    new String(in.readAllBytes(), StandardCharsets.UTF_8).replace('~', Language.NO_BREAK),
                    respelling);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    /** A message begins with its key at the very left of a line, and goes on to the next one or a comment. */
    private static MessageSources cut(String file, String source, Respelling respelling) {
        Map<String, String> plain = new HashMap<>();
        Map<String, String> others = new HashMap<>();
        StringBuilder message = new StringBuilder();
        for (String line : (source + "\n#").split("\n")) {
            if (line.startsWith("#") || beginsMessage(line)) {
                put(file, message.toString(), respelling, plain, others);
                message.setLength(0);
            }
            if (!line.startsWith("#")) {
                message.append(line).append('\n');
            }
        }
        return new MessageSources(Map.copyOf(plain), Map.copyOf(others));
    }

    private static boolean beginsMessage(String line) {
        return !line.isEmpty() && (Character.isLetter(line.charAt(0)) || line.charAt(0) == '-');
    }

    private static void put(
            String file, String message, Respelling respelling, Map<String, String> plain, Map<String, String> others) {
        String source = message.strip();
        if (source.isEmpty()) {
            return;
        }
        int equals = source.indexOf('=');
        if (equals < 0) {
            throw new IllegalArgumentException(file + ": no message: " + source);
        }
        String key = source.substring(0, equals).strip();
        source = source.substring(0, equals) + respelling.respelled(source.substring(equals));
        boolean isPlain = source.indexOf('\n') < 0 && source.indexOf('{') < 0 && !key.startsWith("-");
        String text = source.substring(equals + 1).strip();
        if (plain.containsKey(key) || others.putIfAbsent(key, source + "\n") != null) {
            throw new IllegalArgumentException(file + " has two messages " + key);
        }
        if (isPlain && !text.isEmpty()) {
            others.remove(key);
            plain.put(key, text);
        }
    }

    Set<String> keys() {
        Set<String> keys = new TreeSet<>(plain.keySet());
        others.keySet().stream().filter(key -> !key.startsWith("-")).forEach(keys::add);
        return keys;
    }
}
