#!/usr/bin/env python3
"""Writes invented-harbour.epw: a year of invented weather in the open EPW form, eight heading lines and one line per hour.

Invented: no station measured it. Sun by Cooper's declination and a plain hour angle, beam by one number of haze, clouds by a
fixed multiplicative generator, so that the bytes come out alike everywhere. Fields that no test needs carry the form's own
codes for "missing". Run it in this folder; the result is committed beside it.
"""
import math

LATITUDE, LONGITUDE, ZONE, HEIGHT = 53.2, -9.1, 0.0, 25.0
DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
# One year put together from months of several, as such files are.
YEARS = [2011, 2014, 2009, 2016, 2012, 2010, 2018, 2013, 2008, 2015, 2017, 2011]

HEADING = [
    "LOCATION,Invented Harbour,-,XXX,invented,000000,%.2f,%.2f,%.1f,%.1f" % (LATITUDE, LONGITUDE, ZONE, HEIGHT),
    "DESIGN CONDITIONS,0",
    "TYPICAL/EXTREME PERIODS,0",
    "GROUND TEMPERATURES,0",
    "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
    "COMMENTS 1,Invented data; made by make_epw.py for the tests of SolarEconomics",
    "COMMENTS 2,No station measured it",
    "DATA PERIODS,1,1,Data,Sunday,1/1,12/31",
]


def main():
    state = 20251125
    lines = list(HEADING)
    day_of_year = 0
    for month in range(12):
        for day in range(1, DAYS[month] + 1):
            day_of_year += 1
            state = (state * 48271) % 2147483647
            clear = 0.25 + 0.75 * (state / 2147483647.0)
            declination = math.radians(23.45 * math.sin(2 * math.pi * (284 + day_of_year) / 365))
            b = 2 * math.pi * (day_of_year - 81) / 364
            minutes = 9.87 * math.sin(2 * b) - 7.53 * math.cos(b) - 1.5 * math.sin(b)
            for hour in range(1, 25):
                # An hour 1 is 00:00 to 01:00; its sun is taken at the middle.
                solar = hour - 0.5 + (LONGITUDE - 15 * ZONE) / 15 + minutes / 60
                angle = math.radians(15 * (solar - 12))
                latitude = math.radians(LATITUDE)
                up = math.sin(latitude) * math.sin(declination) + math.cos(latitude) * math.cos(declination) * math.cos(angle)
                outside = 1367 * (1 + 0.033 * math.cos(2 * math.pi * day_of_year / 365))
                beam = diffuse = 0.0
                if up > 0.02:
                    beam = clear * clear * outside * 0.75 ** (1 / (up + 0.05))
                    diffuse = outside * up * (0.12 + 0.18 * (1 - clear))
                total = int(round(beam)) * max(up, 0.0) + round(diffuse)
                air = 10 - 5 * math.cos(2 * math.pi * (day_of_year - 25) / 365) + 3 * math.cos(2 * math.pi * (hour - 15) / 24)
                wind = 4 + 2 * math.sin(day_of_year * 0.9 + hour * 0.2)
                lines.append("%d,%d,%d,%d,60,_,%.1f,99.9,999,999999,%d,9999,9999,%d,%d,%d,999999,999999,999999,9999,999,%.1f,99,99,9999,99999,9,999999999,999,.999,999,99,999,999,99" % (
                    YEARS[month], month + 1, day, hour, air, round(outside * max(up, 0.0)), round(total), round(beam), round(diffuse), wind))
    with open("invented-harbour.epw", "w", newline="\n") as file:
        file.write("\n".join(lines) + "\n")


if __name__ == "__main__":
    main()
