package edgewright.words.write;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.tree.PatternYarn;
import java.util.List;
import java.util.Locale;

/**
 * What the rounds call their yarns: the name, where it is one that stands out in a sentence and that no other yarn has, else
 * the id.
 */
final class YarnLabels {
    private static final String PLAIN_NAME = "\\p{L}[\\p{L}\\p{M}\\p{Nd} '’&/+()-]{0,39}";

    private final Messages phrases;
    private final List<PatternYarn> yarns;

    YarnLabels(Language language, List<PatternYarn> yarns) {
        this.phrases = language.messages("words/phrases");
        this.yarns = yarns;
    }

    String of(PatternYarn yarn) {
        String byId = byId(yarn);
        String name = yarn.name();
        boolean plain = name.matches(PLAIN_NAME) && !name.endsWith(" ");
        long sameName = yarns.stream().filter(other -> same(other.name(), name)).count();
        boolean likeAnId = yarns.stream().anyMatch(other -> same(byId(other), name) || same(other.id(), name));
        return plain && sameName == 1 && !likeAnId ? name : byId;
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
