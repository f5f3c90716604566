"""A year from the sun to AC, one array on one inverter: the equations of the library, one numpy column after another. Argument: FOLDER of the made weather.
Site, plane and types stand here as in Work/SunToAc.cs; the checksums tell when they part."""
import os
import sys
import numpy
from numpy import cos, exp, log, maximum, minimum, radians, sin, sqrt, where
from peer import serve

folder = sys.argv[1]
first_second, step_seconds = numpy.fromfile(os.path.join(folder, "grid.f64"))
global_wm2, air_c, wind_ms = (numpy.fromfile(os.path.join(folder, name)) for name in ("global.f64", "air.f64", "wind.f64"))
LATITUDE, LONGITUDE, TILT, AZIMUTH = 53.2, -9.1, 35.0, 180.0
RATED_KW, RATED_AC_W = 3.78, 3500.0
GROUND, SOILING, MISMATCH, WIRING, PER_K, LOW_LIGHT = 0.2, 0.02, 0.01, 0.015, -0.004, 0.03
U0, U1 = 25.0, 6.84
INDEX, ABSORPTION = 1.526, 4.0 * 0.002


def sun():
    days = (first_second + step_seconds * (numpy.arange(len(global_wm2)) + 0.5)) / 86400 + 2440587.5 - 2451545.0
    t = (days + 67.0 / 86400) / 36525
    mean = 280.46646 + t * (36000.76983 + t * 0.0003032)
    m = radians(357.52911 + t * (35999.05029 - t * 0.0001537))
    e = 0.016708634 - t * (0.000042037 + t * 0.0000001267)
    centre = (1.914602 - t * (0.004817 + t * 0.000014)) * sin(m) + (0.019993 - t * 0.000101) * sin(2 * m) + 0.000289 * sin(3 * m)
    distance = 1.000001018 * (1 - e * e) / (1 + e * cos(m + radians(centre)))
    node = radians(125.04 - 1934.136 * t)
    nutation = -0.00478 * sin(node)
    tilt = radians(23.4392911 - t * (0.0130042 + t * (0.00000016 - t * 0.000000504)) + 0.00256 * cos(node))
    longitude = radians(mean + centre - 0.00569 + nutation)
    c = days / 36525
    sidereal = 280.46061837 + 360.98564736629 * days + 0.000387933 * c * c + nutation * cos(tilt)
    right_ascension = numpy.arctan2(cos(tilt) * sin(longitude), cos(longitude))
    declination = numpy.arcsin(sin(tilt) * sin(longitude))
    hour = radians(sidereal + LONGITUDE) - right_ascension
    lat = radians(LATITUDE)
    east = -cos(declination) * sin(hour)
    north = cos(lat) * sin(declination) - sin(lat) * cos(declination) * cos(hour)
    up = sin(lat) * sin(declination) + cos(lat) * cos(declination) * cos(hour)
    return east, north, up, 1361.0 / (distance * distance)


def glass(facing):
    c = minimum(1, facing)
    inside = sqrt(1 - (1 - c * c) / INDEX**2)
    across = (c - INDEX * inside) / (c + INDEX * inside)
    along = (INDEX * c - inside) / (INDEX * c + inside)
    through = exp(-ABSORPTION / inside) * (1 - (across * across + along * along) / 2)
    return where(facing > 0, through / (exp(-ABSORPTION) * (1 - ((INDEX - 1) / (INDEX + 1)) ** 2)), 0)


def split(up, above):
    high = up >= 0.05
    safe = where(high, up, 1)
    k = minimum(1, global_wm2 / (above * safe))
    between = 0.9511 - 0.1604 * k + 4.388 * k**2 - 16.638 * k**3 + 12.336 * k**4
    share = where(k <= 0.22, 1 - 0.09 * k, where(k <= 0.80, between, 0.165))
    diffuse = where(high, global_wm2 * share, global_wm2)
    return (global_wm2 - diffuse) / safe, diffuse


def efficiency():
    l1, l2, l3 = 0.1 * (1 / 0.90 - 1), 0.5 * (1 / 0.96 - 1), 1 / 0.955 - 1
    first = (l2 - l1) / 0.4
    square = ((l3 - l2) / 0.5 - first) / 0.9
    linear = first - square * 0.6
    return l1 - linear * 0.1 - square * 0.01, linear, square


def run():
    east, north, up, above = sun()
    beam, diffuse = split(up, above)
    beam = where(up > 0, beam, 0)
    tilt, azimuth = radians(TILT), radians(AZIMUTH)
    facing = maximum(0, east * sin(tilt) * sin(azimuth) + north * sin(tilt) * cos(azimuth) + up * cos(tilt))
    directed = minimum(1, beam / above)
    direct = beam * facing + diffuse * directed * facing / maximum(up, 0.0174524064372835)
    dome = diffuse * (1 - directed) * (1 + cos(tilt)) / 2
    ground = global_wm2 * GROUND * (1 - cos(tilt)) / 2
    light = direct + dome + ground
    sky_glass = glass(cos(radians(59.7 - 0.1388 * TILT + 0.001497 * TILT**2)))
    ground_glass = glass(cos(radians(90 - 0.5788 * TILT + 0.002693 * TILT**2)))
    clean = (direct * glass(facing) + dome * sky_glass + ground * ground_glass) * (1 - SOILING)
    faint = maximum(0, 1 + log(maximum(clean, 1) / 1000) * LOW_LIGHT / log(5))
    cell = air_c + light / (U0 + U1 * wind_ms)
    matched = clean * faint * RATED_KW * maximum(0, 1 + PER_K * (cell - 25)) * (1 - MISMATCH)
    dc_w = maximum(0, matched - matched**2 * WIRING / (RATED_KW * 1000))
    constant, linear, square = efficiency()
    net = maximum(0, dc_w / RATED_AC_W - constant)
    output = 2 * net / (1 + linear + sqrt((1 + linear) ** 2 + 4 * square * net))
    return light, dc_w, minimum(output, 1) * RATED_AC_W


serve(run, lambda result: [column.sum() for column in result])
