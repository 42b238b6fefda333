package evidence

// dailySources are the publications behind conditions that are met daily and behind
// the kinds of dizziness. DOIs not printed in what was seen are left out.
var dailySources = []Source{
	{ID: "ng127", Citation: "National Institute for Health and Care Excellence. Suspected neurological conditions: recognition and referral, NG127, 2019"},
	{ID: "bppv2017", Citation: "Guideline for benign paroxysmal positional vertigo (national adaptation of Bhattacharyya N, et al. Otolaryngol Head Neck Surg 2017)"},
	{ID: "ohtable2007", Citation: "Nonpharmacologic management of orthostatic hypotension, table III. J Clin Hypertens 2007;7(10):612-616 as printed", DOI: "10.1111/j.1524-6175.2005.04139.x"},
	{ID: "rcscataract", Citation: "Royal College of Surgeons of England. Recovery after cataract surgery: week table and advice"},
	{ID: "eyeleaflets", Citation: "Single clinic leaflets on glaucoma and retina surgery (UK and lay collections)"},
	{ID: "acsmdevice2010", Citation: "American College of Sports Medicine. Exercising with a pacemaker or implantable cardioverter defibrillator, April 2010"},
	{ID: "eannucci2019", Citation: "Eannucci EF, Barlow BT, Carroll KM, et al. Pose avoidance in place of hip precautions after posterior-approach THA. HSS J 2019;15(3):247-253", DOI: "10.1007/s11420-019-09708-9"},
	{ID: "magnussen2011", Citation: "Magnussen RA, Mallon WJ, Willems WJ, Moorman CT. Long-term activity restrictions after shoulder arthroplasty: survey of surgeons. J Shoulder Elbow Surg 2011;20:281-289"},
	{ID: "gerhardherman2017", Citation: "Gerhard-Herman MD, Gornik HL, Barrett C, et al. 2016 AHA/ACC guideline on lower extremity peripheral artery disease. Circulation 2017;135:e726-e779", DOI: "10.1161/CIR.0000000000000471"},
	{ID: "raeular2018", Citation: "Rausch Osthoff AK, Niedermann K, Braun J, et al. 2018 EULAR recommendations for physical activity in people with inflammatory arthritis and osteoarthritis. Ann Rheum Dis 2018;77(9):1251-1260"},
	{ID: "osteras2017", Citation: "Osteras N, Kjeken I, Smedslund G, et al. Exercise for hand osteoarthritis. Cochrane Database Syst Rev 2017;1:CD010388", DOI: "10.1002/14651858.CD010388.pub2"},
	{ID: "desmeules2025", Citation: "Desmeules F, Roy JS, Lafrance S, et al. Rotator cuff tendinopathy: clinical practice guideline. J Orthop Sports Phys Ther 2025"},
	{ID: "mellor2018", Citation: "Mellor R, Bennell K, Grimaldi A, et al. Education plus exercise versus corticosteroid injection versus wait and see for gluteal tendinopathy. BMJ 2018;361:k1662", DOI: "10.1136/bmj.k1662"},
	{ID: "chimenti2024", Citation: "Chimenti RL, Neville C, Houck J, et al. Midportion Achilles tendinopathy revision - 2024. J Orthop Sports Phys Ther 2024;54(12):CPG1-CPG32", DOI: "10.2519/jospt.2024.0302"},
	{ID: "lucado2022", Citation: "Lucado AM, Day JM, Vincent JI, et al. Lateral elbow pain and muscle function impairments. J Orthop Sports Phys Ther 2022;52(12):CPG1-CPG111", DOI: "10.2519/jospt.2022.0302"},
	{ID: "owen2020", Citation: "Owen PJ, Miller CT, Mundell NL, et al. Which specific modes of exercise training are most effective for treating low back pain? Br J Sports Med 2020;54(21):1279-1287"},
	{ID: "overgaard2013", Citation: "Overgaard J, Kristensen MT. Feasibility of progressive strength training shortly after hip fracture surgery. World J Orthop 2013;4(4):248-258", DOI: "10.5312/wjo.v4.i4.248"},
	{ID: "billinger2014", Citation: "Billinger SA, Arena R, Bernhardt J, et al. Physical activity and exercise recommendations for stroke survivors (AHA/ASA). Stroke 2014;45:2532-2553", DOI: "10.1161/STR.0000000000000022"},
	{ID: "cooney2011", Citation: "Cooney JK, Law RJ, Matschke V, et al. Benefits of exercise in rheumatoid arthritis. J Aging Res 2011:681640", DOI: "10.4061/2011/681640"},
	{ID: "cormie2013", Citation: "Cormie P, Pumpa K, Galvao DA, et al. Heavy loads in women with lymphedema secondary to breast cancer: RCT. J Cancer Surviv 2013;7(3):413-424", DOI: "10.1007/s11764-013-0284-8"},
	{ID: "dobson2013", Citation: "Dobson F, Hinman RS, Roos EM, et al. OARSI recommended performance-based tests for hip or knee osteoarthritis. Osteoarthritis Cartilage 2013"},
}
