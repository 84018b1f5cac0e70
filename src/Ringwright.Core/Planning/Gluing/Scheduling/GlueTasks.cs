using System.Globalization;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The handwork of a glue plan as tasks: what comes after what, how long it takes, what it occupies.</summary>
internal sealed class GlueTasks
{
    private readonly GluePlan _glue;
    private readonly Shop _shop;
    private readonly GlueTaskList _list;
    private readonly int[] _ready; // the task that makes each ring ready for the stack; −1 for none

    private GlueTasks(GluePlan glue)
    {
        (_glue, _shop, _list) = (glue, glue.Plan.Shop, new(glue.Plan.Shop));
        _ready = [.. glue.Rings.Select(_ => -1)];
    }

    public static GlueTaskList Of(GluePlan glue)
    {
        var tasks = new GlueTasks(glue);
        for (int i = 0; i < glue.Rings.Length; i++) tasks.Ring(i);
        tasks.Stack();
        return tasks._list;
    }

    private void Ring(int i)
    {
        RingGluing ring = _glue.Rings[i];
        int[] boards = Add(i, ring.Boards, "laminate", cure: true, []);
        if (ring.GlueUps.IsEmpty) return;
        if (ring.Way == GlueWay.Edges)
        {
            _ready[i] = Add(i, ring.GlueUps, "edges", cure: true, [])[^1];
            return;
        }

        int[] parts = Add(i, ring.GlueUps[..^1], "", cure: false, boards);
        int[] before = parts.Length == 0 ? boards : parts;
        if (ring.Way == GlueWay.Halves) before = [_list.Hand(GlueTaskKind.True, i, "true the halves", _shop.Gluing.MinutesPerTruing, before)];
        GlueUp last = ring.GlueUps[^1];
        int close = _list.Glue(GlueTaskKind.Close, i, Text(ring.Way == GlueWay.AtOnce ? "glue all {0} joints" : "close, {0} joints", last.Joints.Length), GluePace.Minutes(last.Joints.Length, _shop), last.Clamp, last.Clamps, true, before);
        _ready[i] = _list.Hand(GlueTaskKind.Flatten, i, "flatten", _shop.Gluing.MinutesPerFlattening, close);
    }

    // Rubbed pairs are made one right after the other, so all of a ring are one task. Thin strips make tens of thousands of glue-ups.
    private int[] Add(int i, IReadOnlyList<GlueUp> glueUps, string word, bool cure, int[] first)
    {
        HashSet<int> taken = [.. glueUps.SelectMany(u => u.After)];
        int pairs = glueUps.Count(IsPair), rubbed = -1;
        int[] made = new int[glueUps.Count];
        for (int g = 0; g < glueUps.Count; g++)
        {
            GlueUp up = glueUps[g];
            if (IsPair(up))
            {
                if (rubbed < 0) rubbed = _list.Glue(GlueTaskKind.Part, i, Text("rub {0} pairs", pairs), pairs * GluePace.Minutes(1, _shop), up.Clamp, 0, cure, first);
                made[g] = rubbed;
                continue;
            }

            // Only what is taken up by nothing more has to cure.
            int[] after = up.After.IsEmpty ? first : [.. up.After.Select(a => made[a]).Distinct()];
            made[g] = _list.Glue(GlueTaskKind.Part, i, Words(up, word, _glue.Rings[i]), GluePace.Minutes(up.Joints.Length, _shop), up.Clamp, up.Clamps, cure && !taken.Contains(g), after);
        }

        return [.. made.Where((_, g) => !taken.Contains(g)).Distinct()];

        static bool IsPair(GlueUp up) => up.Clamp == GlueClamp.Rubbed && up.After.IsEmpty;
    }

    private void Stack()
    {
        int lower = -1, upper = -1;
        for (int s = 0; s < _glue.Stack.Length; s++)
        {
            StackJoint joint = _glue.Stack[s];
            bool lastOfSection = s == _glue.Stack.Length - 1 || _glue.Stack[s + 1].FromTop != joint.FromTop || _glue.Stack[s + 1].Joins;
            int laid = joint.FromTop ? joint.Lower : joint.Upper;
            int[] sections = joint.Joins ? [lower, upper] : joint.FromTop ? [upper] : [lower];
            int[] after = [.. sections.Append(Ready(joint.Lower)).Append(Ready(joint.Upper)).Where(t => t >= 0).Distinct().Order()];
            string what = joint.Joins ? "join the sections" : joint.Joints == 1 ? "lay on the stack" : Text("lay on the stack, {0} faces", joint.Joints);
            int task = _list.Glue(GlueTaskKind.Stack, laid, what, GluePace.Minutes(joint.Joints, _shop), GlueClamp.Press, 1, lastOfSection, after);
            if (joint.FromTop) upper = task;
            else lower = task;
        }
    }

    // A ring out of a disc is there when the disc is.
    private int Ready(int ring)
    {
        if (_glue.Rings[ring].Way != GlueWay.FromDisc) return _ready[ring];
        string carrier = _glue.Rings[ring].Ring.Board!.Carrier.Name;
        return _ready[Array.FindIndex([.. _glue.Plan.Rings], r => r.Ring.Name == carrier)];
    }

    private static string Words(GlueUp up, string word, RingGluing ring) => up.Work switch
    {
        GlueWork.Run => "glue " + RingGlueSteps.RunNames(up.Made[0].Count, ring, 1),
        GlueWork.Halves => Text("glue both halves, {0} joints", up.Joints.Length),
        _ => Text(word + ", {0} joints", up.Joints.Length),
    };

    private static string Text(string words, int count) => string.Format(CultureInfo.InvariantCulture, words, count);
}
