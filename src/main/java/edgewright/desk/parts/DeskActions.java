package edgewright.desk.parts;

import edgewright.texts.Language;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/** Everything that can be done in the window, by id. */
public final class DeskActions {
    private final Map<String, DeskAction> byId = new LinkedHashMap<>();
    private final Language language;
    private final List<Runnable> afterRefresh = new ArrayList<>();

    public DeskActions(Language language) {
        this.language = language;
    }

    /** An action that is always possible. */
    public void add(String id, Runnable deed) {
        add(id, deed, () -> true);
    }

    /** An action that is possible at times. */
    public void add(String id, Runnable deed, BooleanSupplier possible) {
        byId.put(id, new DeskAction(id, deed, possible, language));
    }

    /**
     * The action with this id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public DeskAction get(String id) {
        DeskAction action = byId.get(id);
        if (action == null) {
            throw new IllegalArgumentException("no action '" + id + "'");
        }
        return action;
    }

    public Collection<DeskAction> all() {
        return byId.values();
    }

    /** Has this done at every refresh, after each action was looked at: for names that depend on the chart. */
    public void afterRefresh(Runnable also) {
        afterRefresh.add(also);
    }

    /** Looks again which actions are possible now. */
    public void refresh() {
        byId.values().forEach(DeskAction::refresh);
        afterRefresh.forEach(Runnable::run);
    }
}
