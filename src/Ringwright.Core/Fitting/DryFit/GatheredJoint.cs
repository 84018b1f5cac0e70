using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The fit as hands can also make it: every joint but the last pressed flush, rims in line, so that the whole closing
/// error gathers between the last wedge and the first. If the wedges sum to too much, the last one does not go in
/// flush; it is then backed off square to the face until it just clears, and the joint is open at the tip.
/// </summary>
/// <param name="Joint">The joint left open (the last).</param>
/// <param name="Gap">Its openings, mm.</param>
public readonly record struct GatheredJoint(int Joint, JointGap Gap)
{
    internal static GatheredJoint Measure(RingModel model, RingLayout layout, Span<JointState> states)
    {
        int last = model.Count - 1;
        states.Clear();
        for (int j = 0; j < last; j++) states[j] = Flush(model, j);
        layout.Place(model, states);
        WedgePose gap = layout.Plus[last].Inverse().Then(layout.Minus[0]);
        var state = new JointState(gap.Origin.Y, gap.Angle + (2 * Math.PI), gap.Origin.X);
        double least = Rows(model, last, state).Least;
        states[last] = least < 0 ? state with { Across = state.Across - least } : state;
        return new(last, JointGapReader.Read(model, last, states[last]));
    }

    /// <summary>
    /// Rims in line and both faces pressed together: the least sum of the openings at either end of the faces, a
    /// linear programme in two unknowns whose answer has two clearances at zero, re-linearised until it stands still.
    /// </summary>
    private static JointState Flush(RingModel model, int joint)
    {
        var state = default(JointState);
        for (int round = 0; round < 5; round++) state = state.Moved(1, Pressed(Rows(model, joint, state).All), model.TipX(joint));
        return state;
    }

    private static Vector3D Pressed(JointRow[] rows)
    {
        double best = double.PositiveInfinity;
        Vector3D move = default;
        for (int a = 0; a < rows.Length; a++)
        {
            for (int b = 0; b < a; b++)
            {
                if (Meeting(rows[a], rows[b]) is not { } m || m.X + m.Y >= best || !Clears(rows, m)) continue;
                (best, move) = (m.X + m.Y, m);
            }
        }

        return move;
    }

    /// <summary>The move that brings both clearances to zero, if they do not act alike.</summary>
    private static Vector3D? Meeting(JointRow a, JointRow b)
    {
        double det = (a.Gradient.X * b.Gradient.Y) - (a.Gradient.Y * b.Gradient.X);
        if (Math.Abs(det) < 1e-9) return null;
        return new(
            ((-a.Clearance * b.Gradient.Y) + (b.Clearance * a.Gradient.Y)) / det,
            ((-b.Clearance * a.Gradient.X) + (a.Clearance * b.Gradient.X)) / det,
            0);
    }

    private static bool Clears(JointRow[] rows, Vector3D move)
    {
        foreach (JointRow row in rows)
            if (row.Clearance + row.Gradient.Dot(move) < -1e-9) return false;
        return true;
    }

    private static (JointRow[] All, double Least) Rows(RingModel model, int joint, JointState state)
    {
        var rows = new JointRow[JointContacts.Count(model, joint)];
        JointContacts.Evaluate(model, joint, state, rows);
        return (rows, rows.Min(r => r.Clearance));
    }
}
