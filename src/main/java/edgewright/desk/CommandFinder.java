package edgewright.desk;

import edgewright.desk.command.Command;
import edgewright.desk.parts.CommandTexts;
import edgewright.desk.parts.DeskActions;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds commands by what they are called, where they stand and what they do. */
final class CommandFinder {
    private final DeskActions actions;
    private final CommandTexts texts;
    private final Messages says;

    CommandFinder(DeskActions actions, Language language) {
        this.actions = actions;
        texts = new CommandTexts(language);
        says = language.messages("desk");
    }

    /**
     * A command as it is found.
     *
     * @param place the menus in which it stands, such as {@code Edit › Cursor and marks}
     * @param keyNames the keys that do it, as they are lettered, the one first that menus show
     * @param why it is not possible now; empty if it is possible
     */
    record Found(Command command, String name, String place, List<String> keyNames, String tip, Optional<String> why) {
        /** The key that does it first of all; empty if it has none. */
        String key() {
            return keyNames.isEmpty() ? "" : keyNames.get(0);
        }
    }

    /**
     * The commands that have all words of the query in their names, menus or tips, whatever their case: first those whose name
     * begins with it, then those whose name has its words, then all others, each in the order of the menus. Every command
     * where nothing is asked for.
     */
    List<Found> find(String query) {
        String asked = query.strip().toLowerCase(Locale.ROOT);
        List<String> words = asked.isEmpty() ? List.of() : List.of(asked.split("\\s+"));
        return MenuPlan.BAR.stream()
                .flatMap(MenuPlan::commands)
                .flatMap(id -> actions.command(id).stream())
                .map(this::found)
                .filter(found -> hasAll(words, found.name() + " " + found.place() + " " + found.tip()))
                .sorted(Comparator.comparing(rank(asked, words)))
                .toList();
    }

    private static Function<Found, Integer> rank(String asked, List<String> words) {
        return found -> {
            if (found.name().toLowerCase(Locale.ROOT).startsWith(asked)) {
                return 0;
            }
            return hasAll(words, found.name()) ? 1 : 2;
        };
    }

    private static boolean hasAll(List<String> words, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return words.stream().allMatch(lower::contains);
    }

    private Found found(Command command) {
        String place = MenuPlan.pathTo(command.id()).stream()
                .flatMap(List::stream)
                .map(menu -> says.text("menu-" + menu).replace("&", ""))
                .collect(Collectors.joining(" › "));
        return new Found(
                command,
                texts.name(command.id()),
                place,
                texts.keyNames(command.id()),
                texts.tip(command.id()),
                command.hindrance().map(texts::why));
    }
}
