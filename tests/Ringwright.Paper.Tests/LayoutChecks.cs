using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Tests;

/// <summary>What every page must keep.</summary>
internal static class LayoutChecks
{
    /// <summary>No text leaves the frame, and no two texts overlap.</summary>
    public static void AssertClean(Drawing page, Box frame)
    {
        (string Text, Box Box)[] boxes = [.. page.TextBoxes];
        foreach ((string text, Box box) in boxes)
            Assert.True(frame.Contains(box), $"\"{text}\" leaves the frame.");
        for (int i = 0; i < boxes.Length; i++)
        {
            for (int j = i + 1; j < boxes.Length; j++)
            {
                if (boxes[i].Box.Overlaps(boxes[j].Box)) Assert.Fail($"\"{boxes[i].Text}\" overlaps \"{boxes[j].Text}\".");
            }
        }
    }

    /// <summary>No line, fill or text leaves the frame.</summary>
    public static void AssertInside(Drawing page, Box frame)
    {
        Box outer = frame.Inset(-0.4); // the frame's own line
        foreach (Box box in page.Marks.SelectMany(Boxes))
            Assert.True(outer.Contains(box), $"A mark at {box} leaves the frame {frame}.");
    }

    private static IEnumerable<Box> Boxes(Mark mark) => mark switch
    {
        Mark.Stroke stroke => stroke.Outline.Flattened().Select(Box.Around),
        Mark.Fill fill => fill.Outline.Flattened().Select(Box.Around),
        Mark.Text text => [text.Bounds],
        Mark.Placed placed => placed.Child.Marks.SelectMany(Boxes).Select(placed.ToParent),
        _ => [],
    };
}
