package edgewright.fit;

import edgewright.texts.Bundle;

/** The texts of this package. */
final class FitTexts {
    static final Bundle BUNDLE = Bundle.of("edgewright.fit.fit");

    private FitTexts() {}
}
