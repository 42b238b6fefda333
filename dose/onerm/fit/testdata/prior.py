# The population prior and a curve through two sets, worked out apart from package fit: the equations written out, and
# the least sum of squares found by golden-section search. Standard library of Python 3. The numbers in TestByHand are its output.
# Run: python3 prior.py
import math

equations = [
    lambda r: 1 + r / 30, lambda r: 36 / (37 - r), lambda r: 100 / (101.3 - 2.67123 * r), lambda r: r**0.1,
    lambda r: 100 / (52.2 + 41.9 * math.exp(-0.055 * r)), lambda r: 1 + r / 40,
    lambda r: 100 / (48.8 + 53.8 * math.exp(-0.075 * r)), lambda r: 1 / (1 - 0.02 * r),
    lambda r: 0.988 + 0.0104 * r + 0.0019 * r**2 - 0.0000584 * r**3,
]
falls = [math.log(math.log(f(10) / f(1))) for f in equations]
mean = sum(falls) / len(falls)
between = math.sqrt(sum((x - mean) ** 2 for x in falls) / (len(falls) - 1))
fall = math.exp(mean)
k = 9 / (math.exp(fall) - 1)
people = math.sqrt((0.034**2 + 0.078**2) / 2 - 0.042**2) / math.log(1 + 7 / k)
sd = math.hypot(between, people)
print("mean %.12g between %.12g people %.12g sd %.12g" % (mean, between, people, sd))

sets = [(5, math.log(20 * 31 / 35)), (10, math.log(20 * 31 / 40))]
share = lambda k, r: -math.log(1 + (r - 1) / k)
height = lambda k: sum(y - share(k, r) for r, y in sets) / 2

def squares(x):
    k = math.exp(x)
    s = sum(((height(k) + share(k, r) - y) / 0.042) ** 2 for r, y in sets)
    return s + ((math.log(-share(k, 10)) - mean) / sd) ** 2

low, high = 2, 5
while high - low > 1e-10:
    a, b = low + (high - low) * 0.381966, low + (high - low) * 0.618034
    low, high = (low, b) if squares(a) < squares(b) else (a, high)
k = math.exp(low)
print("k %.7g 1RM %.7g load at ten %.4g of it" % (k, math.exp(height(k)), math.exp(share(k, 10))))
h = 1e-4
at = lambda x, r: share(math.exp(x), r)
slope = [(at(low + h, r) - at(low - h, r)) / (2 * h) for r in (5, 10)]
log_fall = (math.log(-at(low + h, 10)) - math.log(-at(low - h, 10))) / (2 * h)
told = (slope[0] - slope[1]) ** 2 / 2 / 0.042**2 / log_fall**2
print("told by the sets %.4g" % (told / (told + 1 / sd**2)))
