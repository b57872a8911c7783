package secondbolt.lay.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import secondbolt.draw.Drawing;
import secondbolt.lay.design.DesignLay;
import secondbolt.lay.stock.SpreadCloth;
import secondbolt.lay.stock.StockLay;
import secondbolt.measure.Tape;
import secondbolt.shape.Box;
import secondbolt.worksheet.Once;

/** What is cut from one cloth: the pieces in the order of cutting, and the picture of them. */
public final class CuttingPlan {
    private final StockLay stock;
    private final SpreadCloth spread;
    private final Optional<Box> over;
    private final List<NumberedPiece> pieces;
    private final Once<Drawing> drawing;

    private CuttingPlan(StockLay stock, int cloth, Optional<Box> over, Tape tape) {
        this.stock = stock;
        this.spread = stock.spreads().get(cloth);
        this.over = over;
        this.pieces = NumberedPiece.on(stock, cloth);
        this.drawing = new Once<>(() -> LayDrawing.of(this, tape));
    }

    /** Those of all cloths of a design, in the order they are used. */
    public static List<CuttingPlan> of(DesignLay design, Tape tape) {
        List<CuttingPlan> plans = new ArrayList<>();
        for (StockLay stock : design.stocks()) {
            for (int i = 0; i < stock.spreads().size(); i++) {
                Optional<Box> over = design.remnants().of(stock.spreads().get(i));
                plans.add(new CuttingPlan(stock, i, over, tape));
            }
        }
        return List.copyOf(plans);
    }

    /** The stock that the cloth is of. */
    public StockLay stock() {
        return stock;
    }

    /** The cloth as it is spread. */
    public SpreadCloth spread() {
        return spread;
    }

    /** The maker's name for the cloth. */
    public String name() {
        return spread.name();
    }

    /** What stays over in one piece. */
    public Optional<Box> over() {
        return over;
    }

    /** The pieces on it, in the order of cutting. */
    public List<NumberedPiece> pieces() {
        return pieces;
    }

    /** The picture. */
    public Drawing drawing() {
        return drawing.get();
    }
}
