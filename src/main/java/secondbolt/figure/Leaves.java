package secondbolt.figure;

/**
 * Gives one answer for all kinds of figures that hold no others.
 *
 * @param <R> the answer
 */
public class Leaves<R> implements Figure.Visitor<R> {
    private final R answer;

    /** The answer for all that is not answered otherwise. */
    public Leaves(R answer) {
        this.answer = answer;
    }

    @Override
    public R text(Figure.Text text) {
        return answer;
    }

    @Override
    public R number(Figure.Amount number) {
        return answer;
    }

    @Override
    public R claim(Figure.Claim claim) {
        return answer;
    }

    @Override
    public R size(Figure.Size size) {
        return answer;
    }

    @Override
    public R surface(Figure.Surface surface) {
        return answer;
    }

    @Override
    public R heft(Figure.Heft heft) {
        return answer;
    }

    @Override
    public R clothWeight(Figure.Weight weight) {
        return answer;
    }

    @Override
    public R place(Figure.Place place) {
        return answer;
    }

    @Override
    public R line(Figure.Line line) {
        return answer;
    }

    @Override
    public R sizes(Figure.Sizes sizes) {
        return answer;
    }

    @Override
    public R group(Figure.Group group) {
        return answer;
    }

    @Override
    public R items(Figure.Items items) {
        return answer;
    }
}
