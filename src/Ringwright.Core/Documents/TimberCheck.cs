using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;
using static Ringwright.Core.Documents.ShopCheck;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shop's climate, joints and own woods can be. Each refusal names field and value.</summary>
internal static partial class TimberCheck
{
    public static void Check(Shop shop)
    {
        Check("climate.shop", shop.Climate.Shop);
        Check("climate.home", shop.Climate.Home);
        if (shop.Climate.WoodMoisture is double moisture) Between("climate.woodMoisture", moisture, 1, 100, " percent");
        Between("joint.tension", shop.Joint.Tension, 0.1, 100, " MPa");
        Between("joint.stressKept", shop.Joint.StressKept, 0.01, 1);
        Between("joint.speedSafety", shop.Joint.SpeedSafety, 1, 100);
        if (shop.Species is not { IsDefaultOrEmpty: false } species) return;
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (OwnWood wood in species)
        {
            Check(wood ?? throw new BadInputException("species", "one is null", "a wood is a group of fields"));
            if (!names.Add(wood.Name.Trim())) throw new BadInputException($"species {wood.Name}, name", "another wood has the same name", "each wood needs its own");
        }

        // Finds woods that lack what the table does not know.
        _ = SpeciesTable.For(shop);
    }

    private static void Check(string place, Seasons seasons)
    {
        Check($"{place}.winter", seasons.Winter);
        Check($"{place}.summer", seasons.Summer);
    }

    private static void Check(string place, Air air)
    {
        double celsius = air.Temperature.Celsius;
        if (!(celsius is >= Moisture.ColdestCelsius and <= 60))
            throw new BadInputException($"{place}.temperature", $"{air.Temperature} cannot be", $"{Moisture.ColdestCelsius} °C to 60 °C can");
        Between($"{place}.humidity", air.Humidity, 1, 98, " percent");
    }

    private static void Check(OwnWood wood)
    {
        if (string.IsNullOrWhiteSpace(wood.Name) || wood.Name.Length > 40) throw new BadInputException("species, name", "a wood's name is empty or longer than 40 characters", "a short name is needed, such as maple");
        string place = $"species {wood.Name}, ";
        Given(place + "density", wood.Density, 50, 1500, " kg/m³");
        Given(place + "shrinkageRadial", wood.ShrinkageRadial, 0.1, 25, " percent");
        Given(place + "shrinkageTangential", wood.ShrinkageTangential, 0.1, 25, " percent");
        Given(place + "changeRadial", wood.ChangeRadial, 0.0001, 0.02);
        Given(place + "changeTangential", wood.ChangeTangential, 0.0001, 0.02);
        Given(place + "modulus", wood.Modulus, 500, 50_000, " MPa");
        Given(place + "shear", wood.Shear, 0.5, 60, " MPa");
        Given(place + "tensionAcross", wood.TensionAcross, 0.2, 30, " MPa");
        Given(place + "hardness", wood.Hardness, 50, 30_000, " N");
        Given(place + "mark", wood.Mark, 0, Wood.Marks - 1);
        Lab(place + "fresh", wood.Fresh);
        Lab(place + "aged", wood.Aged);
        if (wood.Swatch is string hex && !Swatch().IsMatch(hex)) throw new BadInputException(place + "swatch", $"“{hex}” is no colour", "six digits are needed, such as #e3c9a5");
    }

    private static void Lab(string place, ImmutableArray<double>? lab)
    {
        if (lab is not ImmutableArray<double> values) return;
        if (values.IsDefault || values.Length != 3) throw new BadInputException(place, "it is not three numbers", "a colour is [L, a, b]");
        Between(place, values[0], 0, 100);
        Between(place, values[1], -128, 128);
        Between(place, values[2], -128, 128);
    }

    private static void Given(string place, double? value, double least, double most, string unit = "")
    {
        if (value is double v) Between(place, v, least, most, unit);
    }

    [GeneratedRegex("^#[0-9a-fA-F]{6}$")]
    private static partial Regex Swatch();
}
