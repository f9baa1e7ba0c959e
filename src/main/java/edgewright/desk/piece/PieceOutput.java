package edgewright.desk.piece;

import edgewright.chart.HookHand;
import edgewright.fit.PatternSize;

/** What can be made of the pattern for one piece. */
public interface PieceOutput {
    /** Saves its words in a file, for whoever holds the hook in this hand. */
    void saveWords(PatternSize piece, HookHand hand);

    /** Publishes it. */
    void publish(PatternSize piece, HookHand hand);
}
