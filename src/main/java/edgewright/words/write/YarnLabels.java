package edgewright.words.write;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.tree.PatternYarn;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What the rounds call their yarns: the name, where it is one that stands out in a sentence and that no other yarn has, else
 * the id.
 */
final class YarnLabels {
    private static final Pattern PLAIN_NAME = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{Nd} '’&/+()-]{0,39}");

    private final Messages phrases;
    private final List<PatternYarn> yarns;
    private final Map<PatternYarn, String> labels = new HashMap<>();

    YarnLabels(Language language, List<PatternYarn> yarns) {
        this.phrases = language.messages("words/phrases");
        this.yarns = yarns;
    }

    String of(PatternYarn yarn) {
        return labels.computeIfAbsent(yarn, this::label);
    }

    private String label(PatternYarn yarn) {
        String byId = byId(yarn);
        String name = yarn.name();
        boolean plain = PLAIN_NAME.matcher(name).matches() && !name.endsWith(" ");
        long sameName = yarns.stream().filter(other -> same(other.name(), name)).count();
        boolean likeAnId = yarns.stream().anyMatch(other -> same(byId(other), name) || same(other.id(), name));
        // In a list of yarns it could not be told whether the words are of the name.
        boolean saysInTurn =
                bare(name).contains(bare(phrases.text("in-turn-word").replace(Language.NO_BREAK, ' ')));
        return plain && sameName == 1 && !likeAnId && !saysInTurn ? name : byId;
    }

    private String byId(PatternYarn yarn) {
        return phrases.text("yarn-id", arg("id", yarn.id()));
    }

    private static boolean same(String one, String other) {
        return bare(one).equals(bare(other));
    }

    /** Blanks and capital letters do not tell two yarns apart for a reader. */
    private static String bare(String text) {
        return text.replace(" ", "").toLowerCase(Locale.ROOT);
    }
}
