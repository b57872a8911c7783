package secondbolt.sewing.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import secondbolt.file.value.Answer;
import secondbolt.garment.PieceEdge;

/**
 * The sewing, as the maker wrote it.
 *
 * @param means what she sews with
 * @param seams how her seams are sewn
 * @param frays how her cloth frays; unknown if she says so or says nothing
 * @param neatened whether both edges of a seam are neatened together, if told
 * @param except seams that are sewn otherwise
 * @param also lines that no join tells of
 * @param thread what she sews with
 */
public record SewingPlan(
        SewingMeans means,
        SeamChoice seams,
        Answer<Fraying> frays,
        Optional<Neatened> neatened,
        List<SeamException> except,
        List<OwnLine> also,
        ThreadPlan thread) {
    /** Nothing told. */
    public static final SewingPlan NOTHING =
            new SewingPlan(
                    SewingMeans.NOTHING,
                    SeamChoice.NOTHING,
                    Answer.unknown(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    ThreadPlan.NOTHING);

    /** Copies the lists. */
    public SewingPlan {
        except = List.copyOf(except);
        also = List.copyOf(also);
    }

    /** How the two edges of a seam are neatened. */
    public enum Neatened {
        /** Each for itself, and the seam pressed open. */
        APART("apart"),
        /** Both in one, and pressed to one side. */
        TOGETHER("together");

        private final String word;

        Neatened(String word) {
            this.word = word;
        }

        /** As written. */
        public String word() {
            return word;
        }
    }

    /** How a seam along these edges is sewn, as far as it is told. */
    public SeamChoice choice(Set<PieceEdge> edges) {
        return except.stream()
                .filter(one -> edges.contains(one.on().value()))
                .map(SeamException::choice)
                .reduce(SeamChoice.NOTHING, SeamChoice::or)
                .or(seams);
    }

    /** How many rows of a finish a seam has, one for each edge that is neatened for itself. */
    public int rowsOfFinish() {
        return neatened.filter(Neatened.TOGETHER::equals).isPresent() ? 1 : 2;
    }
}
