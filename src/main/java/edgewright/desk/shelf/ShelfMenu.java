package edgewright.desk.shelf;

import static edgewright.texts.Arg.arg;

import edgewright.chart.CleanText;
import edgewright.chart.Motif;
import edgewright.chart.NamedMotif;
import edgewright.desk.jobs.Questions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.ShortText;
import edgewright.file.FileProblemException;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;

/** The shelf of motifs as a menu: what lies on it, each with its picture, and a line that puts what is marked there. */
public final class ShelfMenu {
    private static final int MOST_OF_NAME = 48;

    private final Component owner;
    private final MotifShelf shelf;
    private final Supplier<Optional<Motif>> marked;
    private final Consumer<Motif> work;
    private final Questions asking;
    private final Messages says;
    private final ProblemSentences problems;

    /**
     * The menu of a shelf.
     *
     * @param marked what is marked on the chart
     * @param work works a motif where the cursor stands
     */
    public ShelfMenu(
            Component owner,
            MotifShelf shelf,
            Supplier<Optional<Motif>> marked,
            Consumer<Motif> work,
            Questions asking,
            Language language) {
        this.owner = owner;
        this.shelf = shelf;
        this.marked = marked;
        this.work = work;
        this.asking = asking;
        says = language.messages("desk/shelf");
        problems = new ProblemSentences(language);
    }

    /** Fills its menu afresh: others may put files on the shelf. */
    public void fill(JMenu menu) {
        menu.removeAll();
        List<MotifShelf.Kept> all = shelf.all();
        if (all.isEmpty()) {
            menu.add(says.text("shelf-empty")).setEnabled(false);
        }
        all.forEach(kept -> menu.add(kept.read().motif().map(this::line).orElseGet(() -> unreadable(kept))));
        menu.addSeparator();
        JMenuItem keep = Forms.caption(new JMenuItem(), says.text("shelf-keep"), says.text("shelf-keep-tip"));
        keep.setName("shelfKeep");
        keep.setEnabled(marked.get().isPresent());
        keep.addActionListener(event -> marked.get().ifPresent(this::keep));
        menu.add(keep);
    }

    private JMenuItem line(NamedMotif motif) {
        JMenuItem item = new JMenuItem(ShortText.of(motif.name(), MOST_OF_NAME), new MotifIcon(motif.motif()));
        item.setName("shelf." + motif.name());
        item.addActionListener(event -> work.accept(motif.motif()));
        return item;
    }

    private JMenuItem unreadable(MotifShelf.Kept kept) {
        String file = ShortText.of(kept.file().getFileName().toString(), MOST_OF_NAME);
        JMenuItem item = new JMenuItem(says.text("shelf-unreadable", arg("file", file)));
        String sentence = problems.of(kept.file(), kept.read().problems().get(0));
        item.addActionListener(event -> asking.tellSentence(sentence));
        return item;
    }

    private void keep(Motif motif) {
        String asked = JOptionPane.showInputDialog(
                owner, says.text("shelf-name"), says.text("shelf-title"), JOptionPane.PLAIN_MESSAGE);
        String name = asked == null ? "" : CleanText.oneLine(asked);
        if (name.isEmpty()) {
            return;
        }
        try {
            shelf.keep(new NamedMotif(name, motif));
        } catch (FileProblemException e) {
            asking.tellSentence(problems.of(shelf.folder(), e.problem()));
        }
    }
}
