using System.Text.Json;
using Ringwright.Core.Documents;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Time and money as JSON: minutes, mm³, and amounts in the shop's currency; low, likely, high.</summary>
internal static class CostJson
{
    public static void Write(IAnsiConsole console, Plan plan, CostPlan cost) => JsonOut.Write(console, json =>
    {
        json.WriteString("piece", plan.Piece.Name);
        if (plan.Shop.Money?.Currency is string currency) json.WriteString("currency", currency);
        json.WriteNumber("level", Estimate.Level);
        Write(json, "minutes", cost.Minutes);
        if (cost.Cost is Estimate all) Write(json, "cost", all);
        if (cost.Price is Estimate price) Write(json, "price", price);
        if (cost.Labour is Estimate labour) Write(json, "labour", labour);
        if (cost.Supplies is double supplies) json.WriteNumber("supplies", supplies);
        json.WriteObjects("times", cost.Times, time =>
        {
            json.WriteString("work", time.Name);
            json.WriteString("source", time.Source);
            Write(json, "minutes", time.Minutes);
        });
        json.WriteObjects("woods", cost.Woods, wood =>
        {
            json.WriteString("wood", wood.Wood);
            Write(json, "volume", wood.Volume);
            if (wood.Price is Estimate paid) Write(json, "price", paid);
        });
    });

    private static void Write(Utf8JsonWriter json, string name, Estimate estimate)
    {
        json.WriteStartObject(name);
        json.WriteNumber("low", estimate.Low);
        json.WriteNumber("likely", estimate.Likely);
        json.WriteNumber("high", estimate.High);
        json.WriteEndObject();
    }
}
