package edgewright.desk.own;

import java.awt.Window;
import java.util.Optional;

/** The folder of a chart, as far as its own pages need it. Whatever cannot be taken from it or put into it is told there and then. */
public interface OwnFolder {
    /** Asks for a photograph; its name as the chart has it, or empty if none was taken. */
    Optional<String> photograph();

    /** Asks for an imprint file; its name as the chart has it, or empty if none was taken. */
    Optional<String> imprint();

    /**
     * Lets an imprint be made, or be edited if there is one of this name.
     *
     * @param name as the chart has it, or nothing for one that is still to be named
     * @return its name, or empty if it was left as it was
     */
    Optional<String> edited(Window above, String name);
}
