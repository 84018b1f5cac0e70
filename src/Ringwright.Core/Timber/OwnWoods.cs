using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>Woods that are not the table's: the shop's own, and names nobody knows.</summary>
internal static class OwnWoods
{
    private const string Middling = "the wood is in no table: a middling hardwood, rough guess";

    /// <summary>A middling hardwood under a name that is not known.</summary>
    public static Species Assumed(string name)
    {
        Sourced density = new(700, Middling), radial = new(0.05, Middling), tangential = new(0.09, Middling);
        Wood look = Wood.Unknown(name.ToLowerInvariant());
        // A grey of middling lightness: nothing is known of its colour.
        SourcedColour colour = new(60, 8, 22, Middling);
        return Basics(name, density, radial, tangential) with { IsKnown = false, Fresh = colour, Aged = colour, Hex = look.Hex, Mark = look.Mark };
    }

    /// <summary><paramref name="own"/> laid over what is known.</summary>
    public static Species Over(Species? known, OwnWood own)
    {
        Species s = known ?? New(own);
        Sourced? Given(double? value) => value is double v ? new(v, own.Source ?? "the shop's own value") : null;
        Sourced radial = Given(own.ShrinkageRadial * 0.01) ?? s.RadialShrinkage, tangential = Given(own.ShrinkageTangential * 0.01) ?? s.TangentialShrinkage;
        return s with
        {
            Aliases = own.Aliases is { IsDefault: false } aliases ? [.. s.Aliases, .. aliases] : s.Aliases,
            IsKnown = true,
            Density = Given(own.Density) ?? s.Density,
            RadialShrinkage = radial,
            TangentialShrinkage = tangential,
            // The shop's own shrinkage says more than the table's coefficient.
            RadialChange = Given(own.ChangeRadial) ?? (own.ShrinkageRadial is null ? s.RadialChange : SpeciesEstimates.Change(radial)),
            TangentialChange = Given(own.ChangeTangential) ?? (own.ShrinkageTangential is null ? s.TangentialChange : SpeciesEstimates.Change(tangential)),
            Modulus = Given(own.Modulus) ?? s.Modulus,
            Shear = Given(own.Shear) ?? s.Shear,
            TensionAcross = Given(own.TensionAcross) ?? s.TensionAcross,
            Hardness = Given(own.Hardness) ?? s.Hardness,
            Fresh = Colour(own.Fresh, own.Source) ?? s.Fresh,
            Aged = Colour(own.Aged, own.Source) ?? Colour(own.Fresh, own.Source) ?? s.Aged,
            Hex = own.Swatch ?? s.Hex,
            Mark = own.Mark ?? s.Mark,
            Caution = own.Caution ?? s.Caution,
        };
    }

    private static Species New(OwnWood own)
    {
        string source = own.Source ?? "the shop's own value";
        double Needed(double? value, string field) => value
            ?? throw new BadInputException($"species {own.Name}, {field}", "it is missing, and the wood is not in the table", "a wood of your own needs density, shrinkageRadial and shrinkageTangential");
        Species basics = Basics(own.Name.Trim(), new(Needed(own.Density, "density"), source),
            new(0.01 * Needed(own.ShrinkageRadial, "shrinkageRadial"), source), new(0.01 * Needed(own.ShrinkageTangential, "shrinkageTangential"), source));
        Species assumed = Assumed(own.Name.Trim());
        return basics with { Fresh = assumed.Fresh, Aged = assumed.Aged, Hex = assumed.Hex, Mark = assumed.Mark };
    }

    private static Species Basics(string name, Sourced density, Sourced radial, Sourced tangential) => new()
    {
        Name = name,
        FullName = name,
        Density = density,
        RadialShrinkage = radial,
        TangentialShrinkage = tangential,
        RadialChange = SpeciesEstimates.Change(radial),
        TangentialChange = SpeciesEstimates.Change(tangential),
        Modulus = SpeciesEstimates.Modulus(density.Value),
        RadialStiffness = SpeciesEstimates.RadialStiffness,
        TangentialStiffness = SpeciesEstimates.TangentialStiffness,
        Shear = SpeciesEstimates.Shear(density.Value),
        TensionAcross = SpeciesEstimates.TensionAcross(density.Value),
        Fresh = default,
        Aged = default,
        Hex = "",
        Mark = 0,
    };

    private static SourcedColour? Colour(IReadOnlyList<double>? lab, string? source) =>
        lab is { Count: 3 } ? new(lab[0], lab[1], lab[2], source ?? "the shop's own value") : null;
}
