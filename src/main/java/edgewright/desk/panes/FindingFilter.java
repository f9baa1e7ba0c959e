package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.desk.parts.Forms;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Where it is chosen which findings are listed; not there while there is nothing to choose. */
final class FindingFilter extends JPanel {
    private final transient FindingSentences sentences;
    private final transient Messages says;
    private final transient Runnable chosen;
    private final JComboBox<OfRule> rule = new JComboBox<>();
    private final JComboBox<OfRound> round = new JComboBox<>();
    private final JComboBox<FindingChoice.Grouping> grouping = new JComboBox<>(FindingChoice.Grouping.values());
    private transient FindingChoice choice = FindingChoice.ALL;
    private transient List<OfRule> rules = List.of();
    private transient List<OfRound> rounds = List.of();
    /** Set while the boxes follow the chart, so that they choose nothing. */
    private boolean following;

    /** A rule to choose, and how many findings it has; all rules if there is none. */
    private record OfRule(Optional<String> rule, int findings) {}

    /** The same for a round. */
    private record OfRound(OptionalInt round, int findings) {}

    /** @param chosen is run when something else is chosen */
    FindingFilter(FindingSentences sentences, Messages says, Runnable chosen) {
        super(new MigLayout("insets 0, gap 6 4, fillx", "[grow 50, fill][grow 50, fill]", "[][]"));
        this.sentences = sentences;
        this.says = says;
        this.chosen = chosen;
        setOpaque(false);
        setUp(rule, "findingsRule", says.text("findings-rule"), this::ruleText);
        setUp(round, "findingsRound", says.text("findings-round"), this::roundText);
        setUp(
                grouping,
                "findingsGrouping",
                says.text("findings-grouping"),
                (FindingChoice.Grouping of) -> says.text("findings-grouping-" + of));
        rule.setPrototypeDisplayValue(new OfRule(Optional.empty(), 0));
        round.setPrototypeDisplayValue(new OfRound(OptionalInt.empty(), 0));
        add(rule, "spanx 2, wmin 0, wrap");
        add(round, "wmin 0, sg half");
        add(grouping, "wmin 0, sg half");
        setVisible(false);
    }

    private <T> void setUp(JComboBox<T> box, String name, String text, Function<T, String> shown) {
        box.setName(name);
        box.getAccessibleContext().setAccessibleName(text);
        box.setToolTipText(text);
        box.setRenderer(Forms.renderer(shown));
        box.addActionListener(event -> choose());
    }

    /** What is chosen. */
    FindingChoice choice() {
        return choice;
    }

    /** Chooses all of them; what they are put together by stays. */
    void chooseAll() {
        choice = FindingChoice.ALL.withGrouping(choice.grouping());
        rules = List.of();
        rounds = List.of();
    }

    private void choose() {
        if (following || rule.getSelectedItem() == null || round.getSelectedItem() == null) {
            return;
        }
        choice = new FindingChoice(
                ((OfRule) rule.getSelectedItem()).rule(),
                ((OfRound) round.getSelectedItem()).round(),
                (FindingChoice.Grouping) grouping.getSelectedItem());
        chosen.run();
    }

    /** Offers what can be chosen of these findings. */
    void offer(List<Finding> all) {
        setVisible(all.size() > 1 || !choice.isAll());
        if (!isVisible()) {
            return;
        }
        following = true;
        List<OfRule> newRules = rules(all);
        if (!newRules.equals(rules)) {
            rules = newRules;
            rule.setModel(new DefaultComboBoxModel<>(rules.toArray(OfRule[]::new)));
            rules.stream().filter(of -> of.rule().equals(choice.rule())).forEach(rule::setSelectedItem);
        }
        List<OfRound> newRounds = rounds(all);
        if (!newRounds.equals(rounds)) {
            rounds = newRounds;
            round.setModel(new DefaultComboBoxModel<>(rounds.toArray(OfRound[]::new)));
            rounds.stream().filter(of -> of.round().equals(choice.round())).forEach(round::setSelectedItem);
        }
        following = false;
    }

    /** All, and each rule by its title; the chosen one even where it has no finding any more. */
    private List<OfRule> rules(List<Finding> all) {
        Map<String, Long> counts =
                all.stream().collect(Collectors.groupingBy(Finding::rule, TreeMap::new, Collectors.counting()));
        choice.rule().ifPresent(of -> counts.putIfAbsent(of, 0L));
        List<OfRule> offered = new ArrayList<>(List.of(new OfRule(Optional.empty(), all.size())));
        counts.forEach((of, findings) -> offered.add(new OfRule(Optional.of(of), findings.intValue())));
        return offered;
    }

    private List<OfRound> rounds(List<Finding> all) {
        Map<Integer, Long> counts = all.stream()
                .flatMapToInt(finding -> finding.place().inRound().stream())
                .boxed()
                .collect(Collectors.groupingBy(of -> of, TreeMap::new, Collectors.counting()));
        choice.round().ifPresent(of -> counts.putIfAbsent(of, 0L));
        List<OfRound> offered = new ArrayList<>(List.of(new OfRound(OptionalInt.empty(), all.size())));
        counts.forEach((of, findings) -> offered.add(new OfRound(OptionalInt.of(of), findings.intValue())));
        return offered;
    }

    private String ruleText(OfRule of) {
        return of.rule()
                .map(id -> says.text(
                        "findings-rule-one", arg("title", sentences.title(id)), count("findings", of.findings())))
                .orElseGet(() -> says.text("findings-rule-all", count("findings", of.findings())));
    }

    private String roundText(OfRound of) {
        return of.round().isPresent()
                ? says.text(
                        "findings-round-one", number("round", of.round().getAsInt()), count("findings", of.findings()))
                : says.text("findings-round-all");
    }
}
