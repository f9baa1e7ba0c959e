package edgewright.words.others;

import edgewright.chart.Stitch;
import edgewright.texts.Language;
import edgewright.words.grammar.Concept;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Lexicon;
import edgewright.words.grammar.LineKind;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import edgewright.words.grammar.TalkReader;
import edgewright.words.setup.Abbreviations;
import edgewright.words.setup.Facts;
import edgewright.words.setup.Part;
import edgewright.words.setup.SetUpReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the chunks of a text in their order: first what holds for all rounds, then the rounds. */
final class ChunkReader {
    private final Lexicon lexicon;
    private final Facts facts;
    private final Account.Builder account;
    private final List<Remark> remarks;
    private final RoundsReader rounds;
    private final Abbreviations abbreviations;
    private final Parts parts;
    private final SetUpReader setUp;
    private final TalkReader talk;
    private final Set<Integer> yarnLines = new HashSet<>();

    ChunkReader(
            Abbreviations abbreviations,
            Facts facts,
            Account.Builder account,
            List<Remark> remarks,
            RoundsReader rounds,
            Language language) {
        this.abbreviations = abbreviations;
        this.lexicon = abbreviations.lexicon();
        this.facts = facts;
        this.account = account;
        this.remarks = remarks;
        this.rounds = rounds;
        this.parts = new Parts(language);
        this.setUp = new SetUpReader(facts, language);
        this.talk = new TalkReader(language);
        explained();
    }

    /** Notes the lines on which words are explained. */
    private void explained() {
        for (Abbreviations.Entry entry : abbreviations.entries()) {
            account.set(entry.at().line(), LineKind.ABBREVIATION);
            entry.stitch()
                    .filter(stitch -> stitch == Stitch.BACK_LOOP)
                    .ifPresent(back -> facts.backLoopsSaid.add(entry.at()));
            account.explain(entry.at().line(), entry.word(), entry.stitch().or(() -> usual(entry.concept())));
        }
    }

    private static Optional<Stitch> usual(Concept concept) {
        return concept == Concept.CHAIN ? Optional.of(Stitch.CHAIN) : Optional.empty();
    }

    /** Notes the lines on which yarns are named. */
    void yarns(List<Integer> lines) {
        yarnLines.addAll(lines);
    }

    void read(List<Chunk> chunks) {
        List<Chunk> between = new ArrayList<>();
        boolean begun = false;
        for (Chunk chunk : chunks) {
            begun |= chunk.rounds();
            if (!chunk.rounds() && begun && handlesYarn(chunk)) {
                between.add(chunk);
            } else if (!chunk.rounds()) {
                readWords(chunk);
            }
        }
        for (Chunk chunk : chunks) {
            if (chunk.rounds()) {
                rounds.take(chunk);
            } else if (between.contains(chunk)) {
                Chunk.sentences(lexicon.read(chunk.tokens())).forEach(rounds::takeYarnBetween);
                lines(chunk).forEach(line -> account.atLeast(line, LineKind.TECHNIQUE));
            }
        }
    }

    /** Whether all its sentences say how yarn is taken up and cut. */
    private boolean handlesYarn(Chunk chunk) {
        RoundsReader trial = new RoundsReader(lexicon, facts, account, new ArrayList<>(), talk);
        try {
            return Chunk.sentences(lexicon.read(chunk.tokens())).stream().allMatch(trial::takeYarnBetween);
        } catch (Stopped stopped) {
            return false;
        }
    }

    private static List<Integer> lines(Chunk chunk) {
        return chunk.lines().stream().map(line -> line.get(0).line()).toList();
    }

    private void readWords(Chunk chunk) {
        List<Lexeme> words = lexicon.read(chunk.tokens()).stream()
                .filter(word -> !abbreviations.isExplained(word))
                .toList();
        for (List<Lexeme> sentence : Chunk.sentences(words)) {
            readSentence(sentence, chunk.part());
        }
    }

    private void readSentence(List<Lexeme> sentence, Part of) {
        Part part = parts.begunBy(sentence).orElse(of);
        if (part != Part.TENSION && part != Part.PRACTICE) {
            sentence.stream().filter(word -> word.is(Concept.BACK_ONLY)).forEach(facts.backLoopsSaid::add);
        }
        try {
            boolean yarn = sentence.stream().allMatch(word -> yarnLines.contains(word.line()))
                    && sentence.stream().noneMatch(word -> Concept.STITCHES.contains(word.concept()));
            LineKind kind = setUp.take(sentence, yarn ? Part.MATERIALS : part);
            LineKind taken = yarn && kind == LineKind.PROSE ? LineKind.YARNS : kind;
            sentence.forEach(word -> {
                if (taken == LineKind.SET_UP) {
                    account.set(word.line(), taken);
                } else {
                    account.atLeast(word.line(), taken);
                }
            });
        } catch (Stopped stopped) {
            remarks.add(stopped.remark());
            account.set(stopped.remark().line(), LineKind.REFUSED);
        }
    }
}
