package edgewright.desk.own;

import static edgewright.texts.Arg.arg;

import edgewright.chart.CleanText;
import edgewright.chart.Extras;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TypingListener;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Photographs, texts and imprint of a chart. Photographs can be added once the chart has a folder. */
public final class OwnPagesDialog extends FormDialog {
    private final transient Messages says;
    private final DraftList<PhotoDraft> photos;
    private final DraftList<TextDraft> texts;
    private final JTextField alternative = new JTextField(30);
    private final JTextField caption = new JTextField(30);
    private final JComboBox<Photo.At> at = new JComboBox<>(Photo.At.values());
    private final JTextField title = new JTextField(30);
    private final JTextArea text = new JTextArea(8, 40);
    private final JTextField imprint = new JTextField(30);
    private boolean filling;

    /** A photograph that may still lack its words. */
    private record PhotoDraft(String file, String alternative, String caption, Photo.At at, Extras extras) {}

    /** A section that may still lack its title or its text. */
    private record TextDraft(String title, String text, Extras extras) {}

    /** @param folder empty as long as the chart has none */
    public OwnPagesDialog(Window owner, OwnMatter own, Optional<OwnFolder> folder, Language language) {
        super(owner, "ownPages", language);
        says = language.messages("desk/own");
        titled(says.text("title"), says.text("accept"));
        JButton choose = Forms.caption(new JButton(), says.text("photo-add"));
        choose.setName("own.photos.add");
        choose.setEnabled(folder.isPresent());
        photos = new DraftList<>(
                "own.photos",
                own.photos().stream()
                        .map(p -> new PhotoDraft(p.file(), p.alternative(), p.caption(), p.at(), p.extras()))
                        .toList(),
                choose,
                PhotoDraft::file,
                says);
        choose.addActionListener(event -> folder.flatMap(OwnFolder::photograph)
                .ifPresent(file -> photos.addDraft(new PhotoDraft(file, "", "", Photo.At.GALLERY, Extras.NONE))));
        JButton write = Forms.caption(new JButton(), says.text("text-add"));
        write.setName("own.texts.add");
        texts = new DraftList<>(
                "own.texts",
                own.sections().stream()
                        .map(s -> new TextDraft(s.title(), s.text(), s.extras()))
                        .toList(),
                write,
                draft -> draft.title().isBlank() ? says.text("text-untitled") : draft.title(),
                says);
        write.addActionListener(event -> texts.addDraft(new TextDraft("", "", Extras.NONE)));
        imprint.setText(own.imprint().orElse(""));
        JTabbedPane tabs = new JTabbedPane();
        tabs.setName("own.tabs");
        addTab(tabs, says.text("tab-photos"), photoTab(folder.isEmpty()));
        addTab(tabs, says.text("tab-texts"), textTab());
        addTab(tabs, says.text("tab-imprint"), imprintTab(folder));
        form().add(tabs, "span, grow, pushy");
        photos.onChoice(this::fillPhoto);
        texts.onChoice(this::fillText);
    }

    private static void addTab(JTabbedPane tabs, String text, JComponent tab) {
        int mark = text.indexOf('&');
        tabs.addTab(text.replace("&", ""), tab);
        tabs.setMnemonicAt(tabs.getTabCount() - 1, Character.toUpperCase(text.charAt(mark + 1)));
        tabs.setDisplayedMnemonicIndexAt(tabs.getTabCount() - 1, mark);
    }

    private JComponent photoTab(boolean unsaved) {
        JPanel tab = tab();
        tab.add(photos, "span, grow, pushy");
        add(tab, "own.alternative", says.text("photo-alternative"), alternative);
        add(tab, "own.caption", says.text("photo-caption"), caption);
        at.setRenderer(Forms.renderer((Photo.At place) -> says.text("at-" + place.name())));
        add(tab, "own.at", says.text("photo-at"), at);
        about(tab, says.text(unsaved ? "photo-unsaved" : "photo-about"));
        for (JTextField field : List.of(alternative, caption)) {
            field.getDocument().addDocumentListener(new TypingListener(this::takePhoto));
        }
        at.addActionListener(event -> takePhoto());
        return tab;
    }

    private JComponent textTab() {
        JPanel tab = tab();
        tab.add(texts, "span, grow, pushy");
        add(tab, "own.title", says.text("text-title"), title);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setName("own.text");
        Forms.tabLeaves(text);
        tab.add(Forms.label(says.text("text-text"), text), "top, gaptop 5");
        tab.add(new JScrollPane(text), "grow, wmin 0");
        about(tab, says.text("text-about"));
        title.getDocument().addDocumentListener(new TypingListener(this::takeText));
        text.getDocument().addDocumentListener(new TypingListener(this::takeText));
        return tab;
    }

    private JComponent imprintTab(Optional<OwnFolder> folder) {
        JPanel tab = tab();
        add(tab, "own.imprint", says.text("imprint"), imprint);
        JButton choose = Forms.caption(new JButton(), says.text("imprint-choose"));
        choose.setName("own.imprint.choose");
        choose.addActionListener(event -> folder.flatMap(OwnFolder::imprint).ifPresent(imprint::setText));
        JButton edit = new JButton();
        edit.setName("own.imprint.edit");
        edit.addActionListener(event -> folder.flatMap(
                        beside -> beside.edited(this, imprint.getText().strip()))
                .ifPresent(imprint::setText));
        Runnable caption =
                () -> Forms.caption(edit, says.text(imprint.getText().isBlank() ? "imprint-make" : "imprint-edit"));
        caption.run();
        imprint.getDocument().addDocumentListener(new TypingListener(caption));
        choose.setEnabled(folder.isPresent());
        edit.setEnabled(folder.isPresent());
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6"));
        buttons.add(choose);
        buttons.add(edit);
        tab.add(buttons, "skip");
        about(tab, says.text(folder.isEmpty() ? "imprint-unsaved" : "imprint-about"));
        return tab;
    }

    private static void about(JPanel tab, String text) {
        JTextArea prose = Forms.prose(text);
        Look.write(prose, "quiet");
        prose.setFocusable(false);
        tab.add(prose, "span, growx, wmin 0");
    }

    private static JPanel tab() {
        return new JPanel(new MigLayout("insets 12, gap 8 8, fillx, wrap 2", "[][grow, fill]"));
    }

    private static void add(JPanel tab, String name, String label, JComponent field) {
        field.setName(name);
        tab.add(Forms.label(label, field));
        tab.add(field, "wmin 0");
    }

    private void fillPhoto() {
        fill(() -> {
            Optional<PhotoDraft> draft = photos.choice();
            alternative.setText(draft.map(PhotoDraft::alternative).orElse(""));
            caption.setText(draft.map(PhotoDraft::caption).orElse(""));
            at.setSelectedItem(draft.map(PhotoDraft::at).orElse(Photo.At.GALLERY));
            List.of(alternative, caption, at).forEach(field -> field.setEnabled(draft.isPresent()));
        });
    }

    private void fillText() {
        fill(() -> {
            Optional<TextDraft> draft = texts.choice();
            title.setText(draft.map(TextDraft::title).orElse(""));
            text.setText(draft.map(TextDraft::text).orElse(""));
            List.of(title, text).forEach(field -> field.setEnabled(draft.isPresent()));
        });
    }

    /** Fields that are filled in say nothing new. */
    private void fill(Runnable fields) {
        if (!filling) {
            filling = true;
            fields.run();
            filling = false;
            look();
        }
    }

    private void takePhoto() {
        take(() -> photos.change(draft -> new PhotoDraft(
                draft.file(),
                alternative.getText(),
                caption.getText(),
                at.getItemAt(at.getSelectedIndex()),
                draft.extras())));
    }

    private void takeText() {
        take(() -> texts.change(draft -> new TextDraft(title.getText(), text.getText(), draft.extras())));
    }

    private void take(Runnable taking) {
        if (!filling) {
            filling = true;
            taking.run();
            filling = false;
            look();
        }
    }

    /** What the dialog says. */
    OwnMatter matter() {
        return new OwnMatter(
                photos.all().stream()
                        .map(p -> new Photo(p.file(), p.alternative(), p.caption(), p.at(), p.extras()))
                        .toList(),
                texts.all().stream()
                        .map(t -> new OwnSection(t.title(), t.text(), t.extras()))
                        .toList(),
                Optional.of(imprint.getText().strip()).filter(name -> !name.isEmpty()));
    }

    @Override
    protected Optional<String> objection() {
        if (photos == null || texts == null) {
            return Optional.empty();
        }
        Optional<String> unseen = photos.all().stream()
                .filter(photo -> CleanText.oneLine(photo.alternative()).isEmpty())
                .findFirst()
                .map(photo -> says.text("objection-alternative", arg("file", photo.file())));
        Optional<String> empty = texts.all().stream()
                .filter(draft -> CleanText.oneLine(draft.title()).isEmpty()
                        || draft.text().isBlank()
                        || draft.text().length() > OwnSection.LONGEST)
                .findFirst()
                .map(draft -> says.text("objection-text"));
        boolean many = photos.all().size() > Photo.MOST || texts.all().size() > OwnSection.MOST;
        return unseen.or(() -> empty).or(() -> many ? Optional.of(says.text("objection-many")) : Optional.empty());
    }
}
