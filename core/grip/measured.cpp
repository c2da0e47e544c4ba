#include "core/grip/measured.hpp"

#include "core/grip/film.hpp"

namespace treadwater::grip {
namespace {

constexpr Source jaf{"stops-jaf", "A Japanese motoring club's user test, reported by the press",
                     "60 and 100 km/h on a wetted track; depth not stated", "2015",
                     Standing::secondary};
constexpr Source retailer{"stops-retailer", "A US tyre retailer's test, told by three texts",
                          "saloon, 70 mph, 1.3 to 1.5 mm of water", "2007", Standing::secondary};
constexpr Source demonstration{"stops-demonstration",
                               "A tyre maker's demonstration in Japan, reported by clicccar.com",
                               "195/65 R15, 80 km/h, 2 mm of water", "2015", Standing::published};
constexpr Source chart{"stops-chart", "A tyre maker's chart of stops by tread, in two trade texts",
                       "80 km/h; 9.5 and 18.6 m more, 34 and 44 km/h left", "",
                       Standing::secondary};
constexpr Source small_cars{"stops-ams-2021", "auto motor und sport, summer tyres 195/55 R16",
                            "best and worst of eleven, told by a newspaper", "2021",
                            Standing::secondary};
constexpr Source adac_2020{"stops-adac-2020", "ADAC, all-season tyres 235/55 R17",
                           "best, worst and a summer tyre, told by moto.pl", "2020",
                           Standing::secondary};
constexpr Source adac_2023{"stops-adac-2023", "ADAC, winter tyres 225/45 R17",
                           "asphalt and concrete, told by autokult.pl", "2023",
                           Standing::secondary};
constexpr Source adac_2024{"stops-adac-2024", "ADAC, winter tyres 205/55 R16",
                           "concrete, best and worst, told by oponyoryginalne.pl", "2024",
                           Standing::secondary};
constexpr Source warentest{"stops-warentest", "Stiftung Warentest, winter tyres",
                           "best and worst, slippery track, told by a trade page", "",
                           Standing::secondary};
constexpr Source auto_express{"stops-auto-express", "Auto Express, summer tyres, 50 mph",
                              "best and worst on a flooded track", "", Standing::published};
constexpr Source motor{"stops-motor", "Motor (Australia), sports tyres on a hot hatch, 60 km/h",
                       "best and worst on wetted bitumen", "2015", Standing::published};
constexpr Source oeamtc{"stops-oeamtc", "OeAMTC, best and worst of fifty, told by a newspaper",
                        "25 m more, 52 km/h left", "2023", Standing::secondary};
constexpr Source samsung{"stops-samsung", "Samsung traffic safety institute, told by two papers",
                         "100 km/h, 7, 1.6 and 1 mm of tread", "2011", Standing::secondary};
constexpr Source rain{"stops-rain", "auto motor und sport, told by auto.de",
                      "150 km/h in rain, 8 and 2.5 mm of tread", "", Standing::secondary};
constexpr Source test_house{"stops-mira", "A British test house for a campaign on tread depth",
                            "50 mph, 0.5 to 1.5 mm of water; 13 m more from 8 mm to 1.6 mm", "2003",
                            Standing::secondary};

constexpr bool worked_out = true;
constexpr double not_stated = -1.0;

constexpr MeasuredStop row(std::string_view id, const Source& source, double tread_mm,
                           double film_mm, double kmh, double m, std::string_view remark = "",
                           bool by_hand = false) {
  return {id,
          millimetres(tread_mm),
          film_mm < 0.0 ? std::nullopt : std::optional(millimetres(film_mm)),
          kilometres_per_hour(kmh),
          metres(m),
          &source,
          remark,
          by_hand};
}

constexpr MeasuredStop rows[] = {
    row("T01a", braking_test_source, 8.0, 1.0, 80.0, 25.8, "hatchback 225/45 R17, test asphalt"),
    row("T01b", braking_test_source, 3.0, 1.0, 80.0, 31.0),
    row("T01c", braking_test_source, 1.6, 1.0, 80.0, 36.2),
    row("T01d", braking_test_source, 8.0, 1.0, 120.0, 59.1),
    row("T01e", braking_test_source, 3.0, 1.0, 120.0, 124.0),
    row("T01f", braking_test_source, 1.6, 1.0, 120.0, 154.9),
    row("T02a", jaf, 7.6, not_stated, 60.0, 16.7),
    row("T02b", jaf, 4.7, not_stated, 60.0, 16.7),
    row("T02c", jaf, 3.1, not_stated, 60.0, 18.0),
    row("T02d", jaf, 7.6, not_stated, 100.0, 47.6),
    row("T02e", jaf, 4.7, not_stated, 100.0, 50.8),
    row("T02f", jaf, 3.1, not_stated, 100.0, 70.5),
    row("T03a", retailer, 8.0, 1.4, 112.65, 59.5, "printed 10/32 in; water 1.3 to 1.5 mm"),
    row("T03b", retailer, 3.2, 1.4, 112.65, 88.4),
    row("T03c", retailer, 1.6, 1.4, 112.65, 115.5, "88.5 km/h left where the new one had stopped"),
    row("T04a", demonstration, 8.1, 2.0, 80.0, 30.0),
    row("T04b", demonstration, 1.6, 2.0, 80.0, 38.0, "just under 1.6 mm"),
    row("T05a", chart, 8.0, not_stated, 80.0, 43.0, "from the speeds left", worked_out),
    row("T05b", chart, 3.0, not_stated, 80.0, 52.5, "9.5 m more", worked_out),
    row("T05c", chart, 1.6, not_stated, 80.0, 61.6, "18.6 m more", worked_out),
    row("T10a", small_cars, 8.0, not_stated, 80.0, 34.6, "new, best"),
    row("T10b", small_cars, 8.0, not_stated, 80.0, 41.8, "new, worst of eleven"),
    row("T11a", adac_2020, 8.0, not_stated, 80.0, 34.6, "new, best"),
    row("T11b", adac_2020, 8.0, not_stated, 80.0, 38.9, "new, a summer tyre"),
    row("T11c", adac_2020, 8.0, not_stated, 80.0, 41.4, "new, worst"),
    row("T12a", adac_2023, 8.0, not_stated, 80.0, 37.7, "new, asphalt"),
    row("T12b", adac_2023, 8.0, not_stated, 80.0, 38.9, "new, concrete"),
    row("T12c", adac_2023, 8.0, not_stated, 80.0, 34.2, "new, another make, asphalt"),
    row("T12d", adac_2023, 8.0, not_stated, 80.0, 37.8, "new, another make, concrete"),
    row("T13a", adac_2024, 8.0, not_stated, 80.0, 38.5, "new, best, concrete"),
    row("T13b", adac_2024, 8.0, not_stated, 80.0, 46.6, "new, worst, concrete"),
    row("T14a", warentest, 8.0, not_stated, 80.0, 51.0, "new, best"),
    row("T14b", warentest, 8.0, not_stated, 80.0, 69.0, "new, worst"),
    row("T15a", auto_express, 8.0, not_stated, 80.47, 35.7, "new, best"),
    row("T15b", auto_express, 8.0, not_stated, 80.47, 46.5, "new, worst"),
    row("T16a", motor, 8.0, not_stated, 60.0, 13.92, "new, best"),
    row("T16b", motor, 8.0, not_stated, 60.0, 16.96, "new, worst"),
    row("T18a", oeamtc, 8.0, not_stated, 80.0, 34.2, "new, best of fifty", worked_out),
    row("T18b", oeamtc, 8.0, not_stated, 80.0, 59.2, "new, worst of fifty", worked_out),
    row("T19a", samsung, 7.0, not_stated, 100.0, 53.0),
    row("T19b", samsung, 1.6, not_stated, 100.0, 91.0),
    row("T19c", samsung, 1.0, not_stated, 100.0, 105.0),
    row("T20a", rain, 8.0, not_stated, 150.0, 100.0),
    row("T20b", rain, 2.5, not_stated, 150.0, 156.0),
    row("M1", test_house, 8.0, 1.0, 80.4672, 26.9, "13 m less than at 1.6 mm", worked_out),
    row("M2", test_house, 3.0, 1.0, 80.4672, 31.7),
    row("M3", test_house, 1.6, 1.0, 80.4672, 39.9),
};

}  // namespace

MeasuredStops measured_stops() { return {std::begin(rows), std::end(rows)}; }

}  // namespace treadwater::grip
