package edgewright.words.read;

import java.util.List;

/**
 * Something that a pattern says, as the reader looks for it: the forms in which it can be said, the writer's own first.
 *
 * @param forms at least one
 */
record Phrase(List<Form> forms) {
    Phrase {
        forms = List.copyOf(forms);
    }

    /** One way to say it: what stands there, in order. */
    record Form(List<Step> steps) {
        Form {
            steps = List.copyOf(steps);
        }
    }

    /** What a form is made of. */
    sealed interface Step {}

    /** A sign that parts; it may be left out, or be exchanged for another such sign. */
    enum Parting implements Step {
        ANY
    }

    /**
     * A word or a sign that must stand there.
     *
     * @param text in small letters
     */
    record Literal(String text, Expectation expected) implements Step {}

    /** A word, or some of them, in any of its spellings. */
    record Spelled(Spellings spellings, Expectation expected) implements Step {}

    /** A gap that something else fills. */
    record Gap(String name) implements Step {}

    /** What may stand in the gaps of a phrase. */
    @FunctionalInterface
    interface Gaps {
        /** Takes what stands in this gap; whether it did. */
        boolean take(String gap);
    }

    /** For a phrase without gaps. */
    static final Gaps NONE = gap -> {
        throw unknown(gap);
    };

    /** A gap that the reader has nothing for: the mistake is in the resources. */
    static IllegalArgumentException unknown(String gap) {
        return new IllegalArgumentException("nothing is known to stand in the gap $" + gap);
    }
}
