using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures.Gluing;
using Ringwright.Paper.Pictures.Lathe;
using Ringwright.Paper.Pictures.Pieces;

namespace Ringwright.Paper.Pictures;

/// <summary>One way to look at a plan, by its name: the one list of pictures for shell and app.</summary>
public sealed class PlanView
{
    private static readonly Room Page = new(200, 200);

    private readonly Func<Plan, RingPlan, bool> _has;
    private readonly Func<Plan, RingPlan, MeasureStyle, bool, Drawing> _draw;

    private PlanView(string name, string shows, bool ofRing, Func<Plan, RingPlan, bool> has, Func<Plan, RingPlan, MeasureStyle, bool, Drawing> draw) =>
        (Name, Shows, OfRing, _has, _draw) = (name, shows, ofRing, has, draw);

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>What it shows.</summary>
    public string Shows { get; }

    /// <summary>Whether it is about one ring; otherwise about the whole piece.</summary>
    public bool OfRing { get; }

    /// <summary>All views.</summary>
    public static IReadOnlyList<PlanView> All { get; } =
    [
        new("piece", "the piece, half from outside, half cut through", false, (plan, _) => PieceSheet.IsFor(plan), (plan, _, style, coloured) => PiecePage.Whole(plan, style, coloured)),
        new("unrolled", "the outside laid flat", false, (plan, _) => PieceSheet.IsFor(plan), (plan, _, style, coloured) => PiecePage.Unrolled(plan, style, coloured)),
        Ring("ring", "from above, glued", (_, _) => true, (_, ring, style, coloured) => RingPicture.Draw(ring, style, Page, coloured)),
        Ring("wedge", "one wedge with its sizes, as sawn and as sanded", IsSawn, (_, ring, style, _) => WedgePicture.Draw(ring, style, Page)),
        Ring("strip", "how the wedges lie in their board", IsSawn, Strip),
        Ring("stop", "the board at the blade and the stop", IsSawn, (_, ring, style, _) => StopPicture.Draw(ring, style, Page)),
        Ring("fence", "the setting of the fence, from above", IsSawn, (plan, ring, style, _) => FencePicture.Draw(ring, plan.Shop.Sled, style, Page)),
        new("first-cut", "the setting, and how to judge the first cut", true, (_, ring) => IsSawn(ring) && !TestCutPicture.Of(ring).IsEmpty, (plan, ring, style, _) => SawPicture.Draw(ring, plan.Shop.Sled, TestCutPicture.Of(ring), style)),
        Ring("stave-section", "a stave cut through", (_, ring) => ring.Stave is not null, (_, ring, style, _) => StaveSectionPicture.Draw(ring, style, Page)),
        Ring("stave-face", "a stave from its face", (_, ring) => ring.Stave is not null, (_, ring, style, _) => StaveFacePicture.Draw(ring, style, Page)),
        new("stave-joint", "two neighbours at their joint, true scale", true, (_, ring) => ring.Stave is not null, (_, ring, style, _) => PicturePage.Of(Page.Width, new Paragraph($"{ring.Ring.Name}: two neighbours at their joint, 1:1", TypeScale.Heading), new Picture(StaveJointPicture.Draw(ring, style, Page)))),
        Ring("band", "the slab of a motif band", (_, ring) => ring.Lamination is not null, (_, ring, style, _) => BandPicture.Draw(ring, style, Page)),
        Ring("strips", "the glued strips of a laminated board", (_, ring) => ring.Lamination is not null, (_, ring, style, _) => StripStackPicture.Draw(ring, style, Page)),
        Ring("board", "the cuts through a board of rings", (_, ring) => ring.Board is not null, (_, ring, style, _) => BoardSectionPicture.Draw(ring.Board!, style, Page)),
        Ring("stack", "the stack that the rings of a board make", (_, ring) => ring.Board is not null, (plan, ring, style, _) => StackPicture.Draw(plan, ring.Board!, style, Page)),
        new("glue", "when to glue what, in a quick order", false, (plan, _) => GluePlan.Of(plan).HasWork, (plan, _, style, _) => SchedulePage.Of(GlueSchedule.Quick(GluePlan.Of(plan)), style)),
        new("lathe", "the work at the lathe, cut along its axis", false, (plan, _) => LathePlan.Of(plan) is { Rings.IsEmpty: false }, (plan, _, style, _) => LathePage.Draw(plan, LathePlan.Of(plan)!, style)),
    ];

    /// <summary>The view of a name.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static PlanView Named(string name) => All.FirstOrDefault(v => string.Equals(v.Name, name, StringComparison.OrdinalIgnoreCase))
        ?? throw new BadInputException("view", $"there is none called “{name}”", $"one of these is needed: {string.Join(", ", All.Select(v => v.Name))}");

    /// <summary>The views that a plan has, of one of its rings and of the whole.</summary>
    public static IEnumerable<PlanView> Of(Plan plan, RingPlan ring) => All.Where(v => v._has(plan, ring));

    /// <summary>Draws it as a picture that stands by itself.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="ring">The ring, for a view of one; one batch of it alone, where it has several.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    /// <exception cref="BadInputException">There is nothing of the kind in this plan.</exception>
    public Drawing Draw(Plan plan, RingPlan ring, MeasureStyle style, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ring);
        if (!_has(plan, ring)) throw new BadInputException($"view {Name}", $"{(OfRing ? $"ring {ring.Ring.Name}" : plan.Piece.Name)} has nothing to show there", $"one of these is needed: {string.Join(", ", Of(plan, ring).Select(v => v.Name))}");
        return _draw(plan, ring, style, coloured);
    }

    private static PlanView Ring(string name, string shows, Func<Plan, RingPlan, bool> has, Func<Plan, RingPlan, MeasureStyle, bool, ScaledPicture> draw) => new(name, shows, true, has, (plan, ring, style, coloured) =>
    {
        ScaledPicture picture = draw(plan, ring, style, coloured);
        return PicturePage.Of(Math.Max(Page.Width, picture.Drawing.Width), new Paragraph($"{ring.Ring.Name}: {shows}, {picture.Scale}", TypeScale.Heading), new Picture(picture.Drawing));
    });

    private static bool IsSawn(Plan plan, RingPlan ring) => IsSawn(ring);

    private static bool IsSawn(RingPlan ring) => !ring.Batches.IsEmpty && ring.Stave is null;

    private static ScaledPicture Strip(Plan plan, RingPlan ring, MeasureStyle style, bool coloured)
    {
        int wedges = Math.Min((int)ring["wedges-per-board"].Value, ring.Woods.Max(w => w.ToSaw));
        return StripPicture.Draw(ring, style, plan.Shop.Boards.Length.Millimetres, wedges, Page.Width);
    }
}
