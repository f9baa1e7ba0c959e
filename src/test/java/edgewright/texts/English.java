package edgewright.texts;

/** The language that tests speak, unless they are about languages. */
public final class English {
    public static final Language LANGUAGE = Language.of("en");

    private English() {}
}
