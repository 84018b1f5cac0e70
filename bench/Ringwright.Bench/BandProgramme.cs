using Google.OrTools.LinearSolver;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;

namespace Ringwright.Bench;

/// <summary>
/// The dry fit as one linear programme: small motions of all wedges from their places in the even ring, corners
/// of neighbours kept outside each other's faces, least perimeter of the polygon that circumscribes the outer corners with
/// two sides for each wedge.
/// </summary>
internal static class BandProgramme
{
    /// <summary>The least band, mm; NaN when the solver gives up, which both do with some rings.</summary>
    /// <param name="wedges">The ring.</param>
    /// <param name="by">A solver of OR-Tools, GLOP or CLP.</param>
    internal static double Solve(FitWedge[] wedges, string by)
    {
        using Solver solver = Solver.CreateSolver(by);
        int n = wedges.Length;
        double apothem = wedges.Average(w => Rim(w)) / 2 / Math.Tan(Math.PI / n);
        Body[] bodies = [.. wedges.Select((w, i) => new Body(solver, w, 2 * Math.PI * i / n, apothem, fixedHere: i == 0))];
        for (int i = 0; i < n; i++)
        {
            (Body a, Body b) = (bodies[i], bodies[(i + 1) % n]);
            foreach (int k in new[] { 2, 3 }) KeepApart(solver, a, k, b, 0, 1);
            foreach (int k in new[] { 0, 1 }) KeepApart(solver, b, k, a, 2, 3);
        }

        return LeastBand(solver, bodies);
    }

    private static double Rim(FitWedge wedge) => (wedge.Bottom.Vertices[2] - wedge.Bottom.Vertices[1]).Length;

    private static double LeastBand(Solver solver, Body[] bodies)
    {
        int sides = 2 * bodies.Length;
        double weight = 2 * Math.Tan(Math.PI / sides);
        double even = 0;
        Objective objective = solver.Objective();
        for (int m = 0; m < sides; m++)
        {
            Vector2D u = Vector2D.AtAngle(2 * Math.PI * m / sides);
            Body[] near = [.. new[] { (m / 2) - 1, m / 2, (m / 2) + 1 }.Select(i => bodies[(i + bodies.Length) % bodies.Length])];
            double reach = near.Max(b => b.Corners[1..3].Max(p => p.Dot(u)));
            even += weight * reach;
            Variable farther = solver.MakeNumVar(-10, 10, "");
            objective.SetCoefficient(farther, weight);
            foreach (Body body in near)
            {
                foreach (Vector2D p in body.Corners[1..3])
                {
                    Constraint row = solver.MakeConstraint((p.Dot(u) - reach), double.PositiveInfinity);
                    row.SetCoefficient(farther, 1);
                    body.AddMotion(row, p, u, -1);
                }
            }
        }

        objective.SetMinimization();
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? even + objective.Value() : double.NaN;
    }

    private static void KeepApart(Solver solver, Body corner, int k, Body face, int f, int g)
    {
        Vector2D p = corner.Corners[k];
        HalfPlane inside = HalfPlane.LeftOf(face.Corners[f], face.Corners[g]);
        Constraint row = solver.MakeConstraint(-inside.Distance(p), double.PositiveInfinity);
        corner.AddMotion(row, p, inside.Normal, 1);
        face.AddMotion(row, p, inside.Normal, -1);
    }

    /// <summary>A wedge in its place in the even ring, with three small motions as variables; corners tip -, rim -, rim +, tip +.</summary>
    private sealed class Body
    {
        private readonly Vector2D _origin;
        private readonly Variable[] _motion;

        public Body(Solver solver, FitWedge wedge, double angle, double apothem, bool fixedHere)
        {
            double far = fixedHere ? 0 : 10;
            _motion = [solver.MakeNumVar(-far, far, ""), solver.MakeNumVar(-far, far, ""), solver.MakeNumVar(-far, far, "")];
            _origin = Vector2D.Polar(apothem - wedge.Bottom.Vertices[1].X, angle);
            Corners = [.. wedge.Bottom.Vertices.Select(p => _origin + p.Rotated(angle))];
        }

        public Vector2D[] Corners { get; }

        public void AddMotion(Constraint row, Vector2D p, Vector2D u, double sign)
        {
            double[] parts = [u.X, u.Y, (p - _origin).Cross(u) / FitRings.Radius];
            for (int v = 0; v < 3; v++) row.SetCoefficient(_motion[v], row.GetCoefficient(_motion[v]) + (sign * parts[v]));
        }
    }
}
