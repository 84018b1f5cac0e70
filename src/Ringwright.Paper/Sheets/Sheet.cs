using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.Sheets;

/// <summary>One sheet of a packet: its free area inside the frame, filled from the top.</summary>
public sealed class Sheet
{
    /// <summary>Room between blocks, mm.</summary>
    internal const double Gap = 6;

    private const double Padding = 6; // between frame and content
    private const double Foot = 15, Air = 3; // of the check rulers: height along the foot, distance from the drawing

    private readonly PrintCorrection _correction;

    internal Sheet(string name, string scale, PaperSize paper, Margins margins, PrintCorrection correction)
    {
        (Name, Scale, _correction) = (name, scale, correction);
        Drawing = new(paper.Width, paper.Height);
        Frame = new(
            margins.Left,
            margins.Top,
            paper.Width - margins.Left - margins.Right,
            paper.Height - margins.Top - margins.Bottom);
        Remaining = (Frame with { Height = Frame.Height - TitleBlock.Height }).Inset(Padding);
    }

    /// <summary>Name of the sheet.</summary>
    public string Name { get; }

    /// <summary>Scale of its main picture.</summary>
    public string Scale { get; }

    /// <summary>What is on it, without frame and title block.</summary>
    public Drawing Drawing { get; }

    /// <summary>The frame, mm.</summary>
    public Box Frame { get; }

    /// <summary>The area that is still free, mm.</summary>
    public Box Remaining { get; private set; }

    /// <summary>Whether nothing has been added yet.</summary>
    public bool IsEmpty => Drawing.Marks.Count == 0;

    /// <summary>Whether a block fits into what is left.</summary>
    public bool Fits(IBlock block)
    {
        ArgumentNullException.ThrowIfNull(block);
        return block.HeightAt(Remaining.Width) <= Remaining.Height + 1e-9;
    }

    /// <summary>Puts a block at the top of what is left.</summary>
    /// <exception cref="LayoutException">It does not fit.</exception>
    public Sheet Add(IBlock block)
    {
        ArgumentNullException.ThrowIfNull(block);
        double height = block.HeightAt(Remaining.Width);
        if (height > Remaining.Height + 1e-9)
            throw new LayoutException($"A block on the sheet \"{Name}\"", height, Remaining.Height);
        block.Draw(Drawing, Remaining.Top(height));
        Remaining = Remaining.Below(Math.Min(Remaining.Height, height + Gap));
        return this;
    }

    /// <summary>Room for a true-scale drawing beside the check rulers, mm in the workshop.</summary>
    internal Room TrueScaleRoom => TrueScaleRoomIn(Remaining, _correction);

    /// <summary>Room for a true-scale drawing in a free area, mm in the workshop.</summary>
    internal static Room TrueScaleRoomIn(Box free, PrintCorrection correction) =>
        new((free.Width - CheckRuler.Breadth - Air) / correction.Across, (free.Height - Foot - Air) / correction.Down);

    /// <summary>
    /// Puts a true-scale drawing in the middle of what is left, stretched by the packet's print correction, with the check
    /// rulers in both directions below and at the left of it. Takes the rest of the sheet.
    /// </summary>
    /// <param name="drawing">The drawing; its millimetres are the workshop's.</param>
    /// <exception cref="LayoutException">It does not fit.</exception>
    public Sheet AddTrueScale(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Box room = AddRulers();
        double width = drawing.Width * _correction.Across, height = drawing.Height * _correction.Down;
        if (width > room.Width + 1e-9)
            throw new LayoutException($"The true-scale drawing on \"{Name}\"", width, room.Width);
        if (height > room.Height + 1e-9)
            throw new LayoutException($"The true-scale drawing on \"{Name}\"", height, room.Height);
        PlaceCorrected(drawing, room.Centre - new Vector2D(width / 2, height / 2));
        Remaining = Remaining with { Y = Remaining.Bottom, Height = 0 };
        return this;
    }

    /// <summary>
    /// Puts a block, some of it at true scale, from the top of what is left, with the check rulers in both directions below and at the
    /// left of it. Takes the rest of the sheet.
    /// </summary>
    /// <exception cref="LayoutException">It does not fit.</exception>
    internal Sheet AddBesideRulers(IBlock block)
    {
        Box room = AddRulers();
        double height = block.HeightAt(room.Width);
        if (height > room.Height + 1e-9) throw new LayoutException($"The block beside the rulers on \"{Name}\"", height, room.Height);
        block.Draw(Drawing, room.Top(height));
        Remaining = Remaining with { Y = Remaining.Bottom, Height = 0 };
        return this;
    }

    /// <summary>Room beside the check rulers in a free area, mm on the paper; negative where even the rulers have none.</summary>
    internal static Room BesideRulers(Box free, PrintCorrection correction)
    {
        double height = free.Height - Foot - Air;
        return new(free.Width - CheckRuler.Breadth - Air, height < CheckRuler.Room * correction.Down ? -1 : height);
    }

    // The upright ruler stands at the left edge, the level one along the foot, its note beside it.
    private Box AddRulers()
    {
        Box room = Remaining;
        Box foot = room.Below(room.Height - Foot);
        double tall = CheckRuler.Room * _correction.Down;
        if (room.Height < Foot + Air + tall)
            throw new LayoutException($"The check rulers on \"{Name}\"", Foot + Air + tall, room.Height);
        PlaceCorrected(CheckRuler.Upright(), new(room.X, foot.Y - Air - tall));
        PlaceCorrected(CheckRuler.Across(), new(foot.X, foot.Bottom - (CheckRuler.Breadth * _correction.Down)));
        Note(foot.After((CheckRuler.Room * _correction.Across) + Air));
        return room.After(CheckRuler.Breadth + Air) with { Height = room.Height - Foot - Air };
    }

    private void Note(Box box)
    {
        string state = string.Create(
            CultureInfo.InvariantCulture,
            $"Print at actual size (100 %).\nCorrection across {_correction.Across:0.0000}, down {_correction.Down:0.0000}.");
        Column note = new(0.8, new Paragraph("Measure this:\nit must be exactly 100 mm.", TypeScale.Body with { Weight = FontWeight.SemiBold }),
            new Paragraph(state, TypeScale.Note));
        double height = note.HeightAt(box.Width);
        if (height > box.Height)
            throw new LayoutException($"The note at the check ruler on \"{Name}\"", height, box.Height);
        note.Draw(Drawing, box.Below(box.Height - height));
    }

    private void PlaceCorrected(Drawing drawing, Vector2D at) =>
        Drawing.Place(drawing, at, _correction.Across, _correction.Down);
}
