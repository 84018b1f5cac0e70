using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>The causes in words, for the sled at hand.</summary>
internal static class CauseSentences
{
    public static Sentence WedgeAngle(double closing, double sd, DiagnosedRing ring) => Math.Abs(closing) < sd
        ? Sentence.Of("The wedge angle may be right: together the wedges miss the full turn by {0}, give or take {1}.", Measured.FineAngle(closing), Measured.FineAngle(sd))
        : Sentence.Of(
        closing >= 0
            ? "The wedges are too narrow in angle: together they miss {0} of the full turn (give or take {1}), so the ring opens at the rim, by {2} if it gathers in one joint."
            : "The wedges are too wide in angle: together they exceed the full turn by {0} (give or take {1}), so the ring opens at the centre, by {2} if it gathers in one joint.",
        Measured.FineAngle(Math.Abs(closing)),
        Measured.FineAngle(sd),
        Measured.Fine(Math.Abs(closing) * (closing >= 0 ? ring.RimRadius : ring.JointLength)));

    public static Sentence Lean(double opening, double sd, DiagnosedRing ring)
    {
        if (Math.Abs(opening) < sd) return Hidden("lean of the faces", sd);
        string side = opening >= 0 ? "top" : "bottom";
        string words = ring.Sled switch
        {
            SledKind.TwoFences => $"Joints open at the {side} by {{0}} (give or take {{1}}). On a sled whose board is never turned over, a leaning blade shears both faces of a wedge alike and closes with wedges of its own kind: look for wedges turned over, for wedges of both rim edges side by side (they open at the top and at the bottom in turn), and for a board that does not lie flat.",
            SledKind.OneFence => $"Joints open at the {side} by {{0}} (give or take {{1}}): the blade leans by about {{2}}, and turning the board over between cuts makes every wedge taper over its height. Set the blade square to the table.",
            _ => $"Joints open at the {side} by {{0}} (give or take {{1}}): the sander's table is about {{2}} from square to its disc. Square it.",
        };
        return Sentence.Of(words, Measured.Fine(Math.Abs(opening)), Measured.Fine(sd), Measured.FineAngle(Math.Abs(opening) / (2 * ring.Thickness)));
    }

    public static Sentence Shape(double belly, double sd) => Math.Abs(belly) < sd
        ? Hidden("belly or hollow of the faces", sd)
        : Sentence.Of(
        belly >= 0
            ? "Faces are bellied, or their edges rounded, by {0} (give or take {1}): joints touch in the middle and stand open at both ends. Sand on a flat, hard support, or not at all."
            : "Faces are hollow by {0} (give or take {1}): joints close at both ends about an open middle, which readings at the ends cannot see. Hold a joint against the light.",
        Measured.Fine(Math.Abs(belly)),
        Measured.Fine(sd));

    public static Sentence Uneven(int joint, double more, double sd) => Math.Abs(more) < sd
        ? Sentence.Of("Joint {0} is like the others, as far as {1} tells.", Measured.Count(joint + 1), Measured.Fine(sd))
        : Sentence.Of(
        more >= 0
            ? "Joint {0} stands open by {1} more than the others (give or take {2}): one of its two wedges is off by itself. Swap it for a spare."
            : "Joint {0} is tighter than the others by {1} (give or take {2}): one of its two wedges is off by itself. Swap it for a spare.",
        Measured.Count(joint + 1),
        Measured.Fine(Math.Abs(more)),
        Measured.Fine(sd));

    private static Sentence Hidden(string what, double sd) =>
        Sentence.Of($"The readings show no {what}; {{0}} could hide in them.", Measured.Fine(2 * sd));
}
